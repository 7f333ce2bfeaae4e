import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ChildId, childId } from '../ids.ts';
import { makeRandom, type Random } from '../random.ts';
import { type CallSpec, nextChildren } from './next-child.ts';

const nextOf = (spec: CallSpec, random: Random) => nextChildren(spec, 1, random)[0] ?? null;

const present = fc
  .integer({ min: 1, max: 24 })
  .map((count) => Array.from({ length: count }, (_, child) => childId(`child ${child}`)));
const length = fc.integer({ min: 0, max: 90 });
const seed = fc.integer();

function calledOn(who: readonly ChildId[], count: number, from: number): readonly ChildId[] {
  return nextChildren({ present: who, calls: [] }, count, makeRandom(from));
}

function countsOf(calls: readonly string[], who: readonly string[]): readonly number[] {
  return who.map((child) => calls.filter((called) => called === child).length);
}

describe('who reads next', () => {
  it('reads k + 2 times only after every other child has read k times', () => {
    fc.assert(
      fc.property(present, length, seed, (who, count, from) => {
        const calls = calledOn(who, count, from);
        for (let many = 1; many <= calls.length; many++) {
          const counts = countsOf(calls.slice(0, many), who);
          expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(2);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('is nobody forgotten: each child waits for at most four turns of every other', () => {
    fc.assert(
      fc.property(present, length, seed, (who, count, from) => {
        const calls = calledOn(who, count, from);
        const longest = 4 * (who.length - 1);
        for (const child of who) {
          const turns = calls.flatMap((called, at) => (called === child ? [at] : []));
          const waits = [...turns, calls.length].map(
            (at, place) => at - (turns[place - 1] ?? -1) - 1,
          );
          expect(Math.max(...waits)).toBeLessThanOrEqual(longest);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('is never the one who has just read, unless there is no other', () => {
    fc.assert(
      fc.property(present, length, seed, (who, count, from) => {
        const calls = calledOn(who, count, from);
        expect(calls).toHaveLength(count);
        for (let at = 1; at < calls.length; at++) {
          expect(calls[at] === calls[at - 1]).toBe(who.length === 1);
        }
      }),
    );
  });

  it('is only ever a child who is there, and nobody when nobody is', () => {
    fc.assert(
      fc.property(
        present,
        fc.array(fc.constantFrom(...['child 0', 'child 1', 'child 2', 'gone'].map(childId)), {
          maxLength: 30,
        }),
        seed,
        (who, calls, from) => {
          const next = nextOf({ present: who, calls }, makeRandom(from));
          expect(who).toContain(next);
          expect(nextChildren({ present: [], calls }, 1, makeRandom(from))).toEqual([]);
        },
      ),
    );
  });

  it('cannot be foreseen: anyone but the last reader may be next, while all have read as often', () => {
    const who = [childId('Ada'), childId('Bo'), childId('Cy'), childId('Di'), childId('Ed')];
    const calls = [childId('Ada'), childId('Bo'), childId('Cy'), childId('Di'), childId('Ed')];
    const drawn = new Set<string | null>();
    for (let from = 0; from < 200; from++) {
      drawn.add(nextOf({ present: who, calls }, makeRandom(from)));
    }
    expect([...drawn].sort()).toEqual(['Ada', 'Bo', 'Cy', 'Di']);
  });

  it('cannot be foreseen by the last one left either: another may come first', () => {
    const who = [childId('Ada'), childId('Bo'), childId('Cy'), childId('Di')];
    const drawn = Array.from({ length: 300 }, (_, from) =>
      nextOf(
        { present: who, calls: [childId('Ada'), childId('Bo'), childId('Cy')] },
        makeRandom(from),
      ),
    );
    expect(new Set(drawn)).toEqual(new Set(['Ada', 'Bo', 'Di']));
    const last = drawn.filter((child) => child === 'Di').length;
    expect(last).toBeGreaterThan(150);
  });

  it('does not make a child who was away read again and again to catch up', () => {
    fc.assert(
      fc.property(seed, (from) => {
        const early = [childId('Ada'), childId('Bo'), childId('Cy'), childId('Di'), childId('Ed')];
        const calls = calledOn(early, 40, from);
        const after = nextChildren(
          { present: [...early, childId('Flo')], calls },
          18,
          makeRandom(from + 1),
        );
        const turns = after.filter((child) => child === 'Flo').length;
        expect(turns).toBeGreaterThanOrEqual(1);
        expect(turns).toBeLessThanOrEqual(7);
      }),
    );
  });

  it('is the same for the same chance', () => {
    fc.assert(
      fc.property(present, length, seed, (who, count, from) => {
        expect(calledOn(who, count, from)).toEqual(calledOn(who, count, from));
      }),
      { numRuns: 20 },
    );
  });
});
