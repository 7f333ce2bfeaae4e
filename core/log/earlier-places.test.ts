import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SEQUENCE } from '../sequence/built-in.ts';
import { EDITION, earlierOrder } from '../sequence/earlier-orders.ts';
import { gapsOf } from '../sequence/gaps.ts';
import { itemKey, makeItem } from '../sequence/item.ts';
import { addItem, dropItem, makeProgress, type Progress, taughtOf } from '../sequence/progress.ts';
import type { Sequence } from '../sequence/sequence.ts';
import { stepOf } from '../sequence/step-of.ts';
import { type GroupPlace, makeGroupPlace, progressOf } from './group-place.ts';

/** The order of 0.1.0. */
const first = earlierOrder(1) as Sequence;
const items = first.steps.flatMap((step) => step.items);
const some = fc.array(fc.constantFrom(...items), { maxLength: 6 });

/** A place as 0.1.0 kept it: with no edition named. */
function keptThen({ upTo, added, dropped }: Progress): GroupPlace {
  const at = (first.steps[upTo - 1]?.items ?? []).map(itemKey);
  return { own: null, upTo, at, added, dropped };
}

function placeIn(upTo: number): Progress {
  return progressOf(keptThen(makeProgress(first, upTo)), SEQUENCE);
}

describe('a place kept in an earlier edition of our order', () => {
  it('keeps exactly what was taught, whatever was added or taken out', () => {
    fc.assert(
      fc.property(fc.nat(first.steps.length), some, some, (upTo, added, dropped) => {
        const began = added.reduce(addItem, makeProgress(first, upTo));
        const then = dropped.reduce(dropItem, began);
        const now = progressOf(keptThen(then), SEQUENCE);
        expect(now.sequence).toBe(SEQUENCE);
        expect(taughtOf(now)).toEqual(taughtOf(then));
      }),
    );
  });

  it('keeps it at every step, with all or nothing taught too', () => {
    for (let upTo = 0; upTo <= first.steps.length; upTo++) {
      expect(taughtOf(placeIn(upTo))).toEqual(taughtOf(makeProgress(first, upTo)));
    }
    expect(placeIn(0)).toEqual(makeProgress(SEQUENCE));
    expect(placeIn(first.steps.length).upTo).toBe(SEQUENCE.steps.length);
  });

  it('is from then on a place in this edition', () => {
    const now = placeIn(60);
    const kept = makeGroupPlace(now, SEQUENCE);
    expect(kept.edition).toBe(EDITION);
    expect(earlierOrder(EDITION)).toBeNull();
    expect(progressOf(kept, SEQUENCE)).toEqual(now);
  });

  // Read by eye: silent e with i was taught last; of what now comes before it, three things were not.
  it('stands where it last taught, and says what it has not had of what comes before', () => {
    const here = placeIn(40);
    expect(first.steps[39]?.items.map(makeItem)).toEqual(['i_e', 'word:put']);
    expect(here.upTo).toBe(stepOf(SEQUENCE, { kind: 'card', id: 'i_e=AY' }));
    const missed = gapsOf(here).flatMap((step) => step.items.map(makeItem));
    for (const item of ['a=AO', 'e=IY', 'y=AY', 'u_e']) expect(missed).toContain(item);
    for (const item of ['a_e', 'sh', 'ng', 'a']) expect(missed).not.toContain(item);
  });

  it('goes up as more was taught, on the whole: never back by more than a stage', () => {
    let highest = 0;
    for (let upTo = 0; upTo <= first.steps.length; upTo++) {
      const { upTo: now } = placeIn(upTo);
      expect(now).toBeGreaterThanOrEqual(highest - 8);
      highest = Math.max(highest, now);
    }
  });
});
