import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ChildId, childId } from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import { makeRandom } from '../random.ts';
import type { ChildBeliefs } from './gap-draws.ts';
import { keepGroups } from './keep-groups.ts';

const CARDS: readonly CardId[] = ['a=AE', 'e=EH', 'sh=SH', 'th=TH'];

/** A child whose chances are these, each with an interval of so much to either side. */
function child(id: ChildId, chances: readonly number[], reach: number): ChildBeliefs {
  const held = (chance: number) => Math.min(0.99, Math.max(0.01, chance));
  return {
    id,
    cards: new Map(
      CARDS.map((card, at) => {
        const p = chances[at] as number;
        return [card, { p, low: held(p - reach), high: held(p + reach) }];
      }),
    ),
  };
}

function keep(
  children: readonly ChildBeliefs[],
  today: readonly (readonly ChildId[])[],
  sizes: readonly number[],
) {
  const kept = keepGroups({ children, today, sizes, random: makeRandom(7) });
  if ('error' in kept) throw new Error(kept.error.message);
  return kept;
}

const VOWELS = [0.2, 0.2, 0.95, 0.95];
const DIGRAPHS = [0.95, 0.95, 0.2, 0.2];

describe('groups that stay', () => {
  it('exchange two children where the gain is clear', () => {
    const children = [
      ...[childId('a'), childId('b'), childId('x')].map((id) => child(id, VOWELS, 0.1)),
      ...[childId('c'), childId('d'), childId('y')].map((id) => child(id, DIGRAPHS, 0.1)),
    ];
    const kept = keep(
      children,
      [
        [childId('a'), childId('b'), childId('y')],
        [childId('c'), childId('d'), childId('x')],
      ],
      [3, 3],
    );
    expect(kept.groups).toEqual([
      ['a', 'b', 'x'],
      ['c', 'd', 'y'],
    ]);
    expect(kept.changes).toEqual([
      { kind: 'exchange', children: ['y', 'x'], sure: expect.any(Number) },
    ]);
    expect(kept.from).toBe('today');
    expect(kept.covered).toBeGreaterThan(0.8);
  });

  it('change nothing for what a few readings leave open', () => {
    const some = [0.55, 0.5, 0.6, 0.55];
    const other = [0.6, 0.55, 0.55, 0.5];
    const children = [
      ...[childId('a'), childId('b'), childId('x')].map((id) => child(id, some, 0.35)),
      ...[childId('c'), childId('d'), childId('y')].map((id) => child(id, other, 0.35)),
    ];
    const today = [
      [childId('a'), childId('b'), childId('y')],
      [childId('c'), childId('d'), childId('x')],
    ];
    expect(keep(children, today, [3, 3])).toMatchObject({ groups: today, changes: [] });
  });

  it('give a child without a place one where it fits, and the child that fits least another when a group is too large', () => {
    const children = [
      ...[childId('a'), childId('b'), childId('e'), childId('z')].map((id) =>
        child(id, VOWELS, 0.1),
      ),
      ...[childId('c'), childId('d')].map((id) => child(id, DIGRAPHS, 0.1)),
    ];
    const fresh = keep(
      children,
      [
        [childId('a'), childId('b'), childId('e')],
        [childId('c'), childId('d')],
      ],
      [4, 4],
    );
    expect(fresh.groups[0]).toEqual(['a', 'b', 'e', 'z']);
    expect(fresh.changes).toEqual([{ kind: 'place', child: 'z', group: 0 }]);
    const smaller = keep(
      children,
      [[childId('a'), childId('b'), childId('c'), childId('e'), childId('z')], [childId('d')]],
      [4, 2],
    );
    expect(smaller.groups).toEqual([
      ['a', 'b', 'e', 'z'],
      ['c', 'd'],
    ]);
  });

  it('move nobody for the order in which sizes are given', () => {
    const children = [childId('a'), childId('b'), childId('c')].map((id) => child(id, VOWELS, 0.3));
    expect(keep(children, [[childId('a')], [childId('b'), childId('c')]], [2, 1]).changes).toEqual(
      [],
    );
  });

  it('begin again where there are none, or another number is wanted', () => {
    const children = [childId('a'), childId('b'), childId('c'), childId('d')].map((id) =>
      child(id, VOWELS, 0.1),
    );
    expect(keep(children, [], [2, 2])).toMatchObject({ from: 'nothing', changes: [] });
    expect(
      keep(children, [[childId('a'), childId('b'), childId('c'), childId('d')]], [2, 2]).from,
    ).toBe('nothing');
  });

  const share = fc.double({ min: 0.05, max: 0.95, noNaN: true });
  const classes = fc
    .array(fc.record({ chances: fc.array(share, { minLength: 4, maxLength: 4 }), reach: share }), {
      minLength: 2,
      maxLength: 12,
    })
    .map((all) => all.map(({ chances, reach }, n) => child(childId(`c${n}`), chances, reach / 2)));

  it('hold everyone once, within their sizes, and asked again of their own answer they stay', () => {
    fc.assert(
      fc.property(classes, fc.nat(11), (children, cut) => {
        const ids = children.map(({ id }) => id);
        const at = 1 + (cut % (ids.length - 1));
        const sizes = [ids.length, ids.length];
        const kept = keep(children, [ids.slice(0, at), ids.slice(at)], sizes);
        expect(kept.groups.flat().toSorted()).toEqual(ids.toSorted());
        const again = keep(children, kept.groups, sizes);
        expect(again.groups).toEqual(kept.groups);
        expect(again.changes).toEqual([]);
        expect(again.covered).toBeCloseTo(kept.covered, 9);
      }),
      { numRuns: 60 },
    );
  });

  it('say what to do when there is no room', () => {
    const children = [childId('a'), childId('b')].map((id) => child(id, VOWELS, 0.1));
    const kept = keepGroups({ children, today: [], sizes: [1], random: makeRandom(1) });
    expect(kept).toMatchObject({ error: { code: 'too-few-places' } });
  });
});
