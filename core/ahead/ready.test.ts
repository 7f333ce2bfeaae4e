import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ChildBeliefs } from '../groups/gap-draws.ts';
import { type ChildId, childId } from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import { makeRandom } from '../random.ts';
import { readiness, readinessSaid, USUAL_RULE } from './ready.ts';

const CARDS: readonly CardId[] = ['sh=SH', 'ch=CH'];

function child(id: ChildId, chances: readonly (readonly [p: number, low: number, high: number])[]) {
  const cards = new Map(
    chances.map(([p, low, high], at) => [CARDS[at] as CardId, { p, low, high }]),
  );
  return { id, cards } satisfies ChildBeliefs;
}

const SURE = [0.98, 0.95, 0.995] as const;
const LOST = [0.1, 0.04, 0.25] as const;
const OPEN = [0.5, 0.1, 0.9] as const;

function ready(children: readonly ChildBeliefs[], rule = USUAL_RULE) {
  const found = readiness(children, CARDS, rule, makeRandom(3));
  if (found === null) throw new Error('There are children and cards.');
  return found;
}

describe('whether a group is ready to move on', () => {
  it('counts who would read all of today’s cards, and names who would not, and which', () => {
    const children = [
      ...[
        childId('a'),
        childId('b'),
        childId('c'),
        childId('d'),
        childId('e'),
        childId('f'),
        childId('g'),
        childId('h'),
      ].map((id) => child(id, [SURE, SURE])),
      child(childId('i'), [SURE, LOST]),
      child(childId('j'), [LOST, LOST]),
    ];
    const found = ready(children);
    expect(found.expected).toBe(8);
    expect(found.low).toBeGreaterThanOrEqual(6);
    expect(found.high).toBeLessThanOrEqual(9);
    expect(found.notYet).toEqual([
      { child: 'j', cards: CARDS },
      { child: 'i', cards: ['ch=CH'] },
    ]);
    expect(readinessSaid(found)).toMatch(
      /^If you teach the next step tomorrow, about 8 of 10 \(\d–\d\) would read today’s cards\.$/,
    );
  });

  it('goes by her rule', () => {
    const all = [childId('a'), childId('b'), childId('c'), childId('d'), childId('e')].map((id) =>
      child(id, [SURE, SURE]),
    );
    expect(ready(all).isReady).toBe(true);
    expect(
      ready([...all.slice(1), child(childId('z'), [LOST, SURE])], { share: 1, sure: 0.8 }),
    ).toMatchObject({
      wanted: 5,
      isReady: false,
    });
    expect(
      ready([...all.slice(1), child(childId('z'), [LOST, SURE])], { share: 0.6, sure: 0.8 })
        .isReady,
    ).toBe(true);
  });

  it('has a wider range where less is known', () => {
    const width = (chances: readonly [number, number, number]) => {
      const children = Array.from({ length: 12 }, (_, n) =>
        child(childId(`${n}`), [chances, chances]),
      );
      const { low, high } = ready(children);
      return high - low;
    };
    expect(width([...OPEN])).toBeGreaterThan(width([...SURE]));
  });

  it('says nothing of nobody', () => {
    expect(readiness([], CARDS, USUAL_RULE, makeRandom(1))).toBeNull();
    expect(
      readiness([child(childId('a'), [SURE, SURE])], [], USUAL_RULE, makeRandom(1)),
    ).toBeNull();
  });

  const share = fc.double({ min: 0.05, max: 0.95, noNaN: true });

  it('never promises more than there are, and names only children of the group', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(share, share), { minLength: 1, maxLength: 9 }), (all) => {
        const children = all.map(([one, other], n) =>
          child(childId(`${n}`), [
            [one, one / 2, (1 + one) / 2],
            [other, other / 2, (1 + other) / 2],
          ]),
        );
        const { size, expected, low, high, sure, notYet } = ready(children);
        expect(size).toBe(children.length);
        expect(low).toBeGreaterThanOrEqual(0);
        expect(high).toBeLessThanOrEqual(size);
        expect(expected).toBeLessThanOrEqual(size);
        expect(low).toBeLessThanOrEqual(high);
        expect(sure >= 0 && sure <= 1).toBe(true);
        const ids = new Set(children.map(({ id }) => id));
        for (const { child: id } of notYet) expect(ids.has(id)).toBe(true);
      }),
      { numRuns: 40 },
    );
  });
});
