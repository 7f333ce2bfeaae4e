import { describe, expect, it } from 'vitest';
import { SEQUENCE } from '../sequence/built-in.ts';
import { addItem, dropItem, makeProgress, numberSteps } from '../sequence/progress.ts';
import type { Sequence } from '../sequence/sequence.ts';
import { makeGroupPlace, progressOf } from './group-place.ts';
import { isGroupPlace } from './is-group-place.ts';

/** The built-in order as another version might have it. */
function otherwise(change: (steps: Sequence['steps']) => Sequence['steps']): Sequence {
  return { ...SEQUENCE, steps: numberSteps(change(SEQUENCE.steps)) };
}

describe('where a group stands', () => {
  it('comes back from the log as it was, at every step of the built-in order', () => {
    for (let upTo = 0; upTo <= SEQUENCE.steps.length; upTo++) {
      const progress = makeProgress(SEQUENCE, upTo);
      expect(progressOf(makeGroupPlace(progress, SEQUENCE), SEQUENCE)).toEqual(progress);
    }
  });

  it('keeps what was taught besides and what was left out', () => {
    const progress = dropItem(
      addItem(makeProgress(SEQUENCE, 5), { kind: 'word', word: 'said' }),
      SEQUENCE.steps[1]?.items[0] ?? { kind: 'word', word: 'the' },
    );
    expect(progressOf(makeGroupPlace(progress, SEQUENCE), SEQUENCE)).toEqual(progress);
  });

  it('keeps her own order whole', () => {
    const own: Sequence = { name: 'Ours', steps: SEQUENCE.steps.slice(0, 4).toReversed() };
    const progress = makeProgress({ ...own, steps: numberSteps(own.steps) }, 2);
    expect(progressOf(makeGroupPlace(progress, SEQUENCE), SEQUENCE)).toEqual(progress);
  });

  it('stays after the step taught last when the built-in order changes around it', () => {
    const standing = makeGroupPlace(makeProgress(SEQUENCE, 10), SEQUENCE);
    const tenth = SEQUENCE.steps[9];
    const longer = otherwise(([first, ...rest]) => [
      {
        number: 0,
        stage: '',
        grade: 'K',
        title: '',
        items: [{ kind: 'word', word: 'zyzzy' }],
        why: '',
      },
      ...(first ? [first] : []),
      ...rest,
    ]);
    const shorter = otherwise((steps) => steps.slice(1));
    for (const [order, upTo] of [
      [longer, 11],
      [shorter, 9],
    ] as const) {
      const progress = progressOf(standing, order);
      expect(progress.upTo).toBe(upTo);
      expect(order.steps[progress.upTo - 1]?.items).toEqual(tenth?.items);
    }
  });

  it('goes to the last of several steps when the step taught last was parted', () => {
    const of = (upTo: number) => SEQUENCE.steps[upTo - 1]?.items.length ?? 0;
    const upTo = SEQUENCE.steps.findLast(({ items }) => items.length > 1)?.number ?? 0;
    expect(of(upTo)).toBeGreaterThan(1);
    const standing = makeGroupPlace(makeProgress(SEQUENCE, upTo), SEQUENCE);
    const parted = otherwise((steps) =>
      steps.flatMap((step) =>
        step.number === upTo
          ? step.items.map((item) => ({ ...step, items: [item] }))
          : [{ ...step, items: step.items.slice(0, 1) }],
      ),
    );
    expect(progressOf(standing, parted).upTo).toBe(upTo - 1 + of(upTo));
  });

  it('goes by the number when all of the step taught last is gone', () => {
    const standing = makeGroupPlace(makeProgress(SEQUENCE, 10), SEQUENCE);
    const without = otherwise((steps) => steps.filter(({ number }) => number !== 10));
    expect(progressOf(standing, without).upTo).toBe(10);
  });

  it('passes through a file and is then still a standing', () => {
    for (const own of [SEQUENCE, { ...SEQUENCE, name: 'Ours' }]) {
      const standing = makeGroupPlace(makeProgress(own, 30), SEQUENCE);
      const back: unknown = JSON.parse(JSON.stringify(standing));
      expect(back).toEqual(standing);
      expect(isGroupPlace(back)).toBe(true);
    }
  });
});
