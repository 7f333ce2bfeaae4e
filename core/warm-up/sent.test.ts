import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SMALL_DRILL } from '../../test/arbitrary-events.ts';
import type { Drill } from '../drills/drill.ts';
import { type ChildId, childId, classId, drillId, eventId, groupId } from '../ids.ts';
import { makeRandom } from '../random.ts';
import type { Lots } from './calling.ts';
import { callNobody, turnCalling } from './calling.ts';
import { doDeed } from './deed.ts';
import { momentsOf } from './moments.ts';
import type { Running } from './run-state.ts';
import { placeOf, planFor, runningAt } from './sent.ts';
import { type Act, standingAt } from './standing.ts';

/** A drill of the size that classes run: 15 cards, 8 sounds, 30 flips. */
const drill: Drill = {
  ...SMALL_DRILL,
  visual: Array.from({ length: 15 }, () => 'm=M'),
  auditory: Array.from({ length: 8 }, () => ({ phonemes: ['K'], spellings: ['c=K', 'k=K'] })),
  run: Array.from({ length: 10 }, () => SMALL_DRILL.run).flat(),
};
/** Ids as long as those that devices make. */
const id = (n: number) => eventId(`${n}`.padEnd(20, 'x'));
const children = Array.from({ length: 26 }, (_, n) => childId(id(n)));
const random = makeRandom(5);
const lots: Lots = {
  present: children,
  draw: (_, count) => Array.from({ length: count }, () => children[random.below(26)] as ChildId),
};
const calls = Array.from({ length: 400 }, (_, n) => children[n % 26] as ChildId);
const begun: Running = {
  classId: classId(id(100)),
  groupId: groupId(id(101)),
  drillId: drillId(id(102)),
  drill,
  standing: standingAt(momentsOf(drill).length),
  blending: 'joined',
  calling: turnCalling(callNobody(calls), true, 0, lots),
  dictated: Array.from({ length: 10 }, (_, n) => `word${n}`),
  asking: id(103),
  rehearsed: null,
  count: 1,
  by: id(104),
};
const acts = fc.array(
  fc.constantFrom<Act>('next', 'next', 'next', 'back', 'skip', 'correct', 'answer', 'dictate'),
  { maxLength: 150 },
);

describe('what travels between windows', () => {
  it('is under 1 KB an act, however long the warm-up goes on', () => {
    fc.assert(
      fc.property(acts, (script) => {
        let now = begun;
        let plan = planFor(now, null, id(1));
        for (const act of script) {
          now = { ...doDeed(now, { does: 'act', act }, lots), count: now.count + 1 };
          plan = planFor(now, plan, id(now.count));
          expect(JSON.stringify(placeOf(now, plan)).length).toBeLessThan(1024);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('gives the warm-up again, and the children called before it come from the log', () => {
    fc.assert(
      fc.property(acts, (script) => {
        const now = script.reduce((was, act) => doDeed(was, { does: 'act', act }, lots), begun);
        const plan = planFor(now, null, 'plan');
        const sent = JSON.parse(JSON.stringify([plan, placeOf(now, plan)]));
        const { calling, ...rest } = runningAt(sent[0], sent[1], calls);
        const { calling: expected, ...others } = now;
        expect(rest).toEqual(others);
        expect({ ...calling, calls: [...calling.calls].sort() }).toEqual({
          ...expected,
          calls: [...expected.calls].sort(),
        });
      }),
      { numRuns: 40 },
    );
  });

  it('takes its plan once, until the drill, the words or the children change', () => {
    const plan = planFor(begun, null, 'first');
    expect(planFor({ ...begun, count: 2, asking: null }, plan, 'second')).toBe(plan);
    expect(planFor({ ...begun, dictated: [] }, plan, 'second').key).toBe('second');
    const fresh = { ...begun.calling, upcoming: [childId('somebody new')] };
    expect(planFor({ ...begun, calling: fresh }, plan, 'second').who).toEqual([
      ...plan.who,
      'somebody new',
    ]);
  });
});
