import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ChildBeliefs } from '../groups/gap-draws.ts';
import { type ChildId, childId } from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import { makeRandom } from '../random.ts';
import { type Readiness, readiness, readinessSaid, ruleSaid, USUAL_RULE } from './ready.ts';

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

  it.each<[sure: number, isReady: boolean, said: string]>([
    [0.6225, false, 'At least 5 of 6 is 62% likely, and your rule asks for 80%: not yet.'],
    [0.7975, false, 'At least 5 of 6 is 79% likely, and your rule asks for 80%: not yet.'],
    [0.8, true, 'At least 5 of 6 is 80% likely, and your rule asks for 80%: ready.'],
    [0, false, 'At least 5 of 6 is less than 1% likely, and your rule asks for 80%: not yet.'],
    [1, true, 'At least 5 of 6 is more than 99% likely, and your rule asks for 80%: ready.'],
  ])('says how far her rule is met, where it is met with %d', (sure, isReady, said) => {
    const found: Readiness = {
      size: 6,
      expected: 5,
      low: 4,
      high: 6,
      wanted: 5,
      sure,
      isReady,
      notYet: [],
    };
    expect(ruleSaid(found, USUAL_RULE)).toBe(said);
  });

  it('names no card where each alone would be read, but not all of them', () => {
    const many: readonly CardId[] = ['sh=SH', 'ch=CH', 'th=TH', 'ck=K', 'm=M', 's=S', 't=T', 'p=P'];
    const cards = new Map(many.map((card) => [card, { p: 0.85, low: 0.75, high: 0.92 }] as const));
    const found = readiness([{ id: childId('a'), cards }], many, USUAL_RULE, makeRandom(3));
    expect(found?.notYet).toEqual([{ child: 'a', cards: [] }]);
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
