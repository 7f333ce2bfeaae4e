import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ChildId, childId } from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import { type ChildChances, suggestGroups } from './suggest-groups.ts';

const CARDS: readonly CardId[] = ['a=AE', 'e=EH', 'sh=SH', 'th=TH', 'ck=K'];

const classes = fc
  .array(fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 5, maxLength: 5 }), {
    maxLength: 24,
  })
  .map((all) =>
    all.map((chances, n) =>
      child(childId(`c${n}`), Object.fromEntries(CARDS.map((c, at) => [c, chances[at] ?? 1]))),
    ),
  );
const sizes = fc.array(fc.integer({ min: 0, max: 9 }), { maxLength: 6 });

function child(id: ChildId, chances: Readonly<Record<CardId, number>>): ChildChances {
  return { id, chances: new Map(Object.entries(chances) as [CardId, number][]) };
}

/** The groups of a suggestion that must be there. */
function groupsOf(children: readonly ChildChances[], wanted: readonly number[]) {
  const suggested = suggestGroups(children, wanted);
  if ('error' in suggested) throw new Error(suggested.error.message);
  return suggested.groups;
}

/** The sum of squared distances of the members from the mean of their group. */
function spreadOf(groups: readonly (readonly ChildChances[])[]): number {
  let spread = 0;
  for (const group of groups) {
    for (const card of CARDS) {
      const chances = group.map(({ chances }) => chances.get(card) ?? 1);
      const mean = chances.reduce((sum, one) => sum + one, 0) / chances.length;
      spread += chances.reduce((sum, one) => sum + (one - mean) ** 2, 0);
    }
  }
  return spread;
}

describe('suggested groups', () => {
  it('hold every child exactly once and never more than their size', () => {
    fc.assert(
      fc.property(classes, sizes, (children, wanted) => {
        const suggested = suggestGroups(children, wanted);
        const places = wanted.reduce((sum, size) => sum + size, 0);
        if ('error' in suggested) {
          expect(places).toBeLessThan(children.length);
          return;
        }
        const placed = suggested.groups.flat();
        expect(placed.toSorted()).toEqual(children.map(({ id }) => id).toSorted());
        expect(suggested.groups).toHaveLength(wanted.length);
        for (const [at, group] of suggested.groups.entries()) {
          expect(group.length).toBeLessThanOrEqual(wanted[at] ?? 0);
        }
      }),
    );
  });

  it('are the same for the same children in any order', () => {
    fc.assert(
      fc.property(classes, (children) => {
        const wanted = [8, 8, 8];
        expect(suggestGroups(children.toReversed(), wanted)).toEqual(
          suggestGroups(children, wanted),
        );
      }),
    );
  });

  it('are filled in proportion when there is room to spare', () => {
    const children = Array.from({ length: 9 }, (_, n) =>
      child(childId(`c${n}`), { 'a=AE': n / 10 }),
    );
    expect(groupsOf(children, [6, 6, 6]).map((group) => group.length)).toEqual([3, 3, 3]);
    expect(groupsOf(children, [12, 6]).map((group) => group.length)).toEqual([6, 3]);
  });

  it('bring together those who need the same, though they need as much', () => {
    const vowels = { 'a=AE': 0.3, 'e=EH': 0.3, 'sh=SH': 1, 'th=TH': 1 };
    const digraphs = { 'a=AE': 1, 'e=EH': 1, 'sh=SH': 0.3, 'th=TH': 0.3 };
    const children = [0, 1, 2, 3, 4, 5].map((n) =>
      child(childId(`c${n}`), n % 2 === 0 ? vowels : digraphs),
    );
    const groups = groupsOf(children, [3, 3]);
    const members = groups.map((group) => group.join(' ')).sort();
    expect(members).toEqual(['c0 c2 c4', 'c1 c3 c5']);
  });

  it('cannot be bettered by two children changing places', () => {
    fc.assert(
      fc.property(classes, (children) => {
        const byId = new Map(children.map((one) => [one.id, one]));
        const groups = groupsOf(children, [10, 7, 7])
          .map((group) => group.map((id) => byId.get(id) as ChildChances))
          .filter((group) => group.length > 0);
        const least = spreadOf(groups);
        const [left = [], right = []] = groups;
        for (const one of left) {
          for (const other of right) {
            const changed = [
              left.map((member) => (member === one ? other : member)),
              right.map((member) => (member === other ? one : member)),
              ...groups.slice(2),
            ];
            expect(spreadOf(changed)).toBeGreaterThan(least - 1e-6);
          }
        }
      }),
      { numRuns: 40 },
    );
  });

  it('say what to do when there are too few places or a child is there twice', () => {
    const two = [child(childId('a'), {}), child(childId('b'), {})];
    expect(suggestGroups(two, [1])).toMatchObject({
      error: {
        code: 'too-few-places',
        message: expect.stringContaining('1 places for 2 children'),
      },
    });
    expect(suggestGroups([...two, child(childId('a'), {})], [5])).toMatchObject({
      error: { code: 'twice' },
    });
  });
});
