import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { SEQUENCE } from './built-in.ts';
import { addItem, dropItem, makeProgress, type Progress, taughtOf } from './progress.ts';
import { beginStageAt, moveStageOf, moveStepOf, renameStageOf, stagesOf } from './reorder.ts';

const last = SEQUENCE.steps.length;
const anyStep = fc.integer({ min: 1, max: last });
const anyItem = fc.constantFrom(...SEQUENCE.steps.flatMap(({ items }) => items));
const stages = stagesOf(SEQUENCE.steps);
const anyStage = fc.integer({ min: 0, max: stages.length - 1 });

const anyProgress: fc.Arbitrary<Progress> = fc
  .tuple(fc.integer({ min: 0, max: last }), fc.array(anyItem, { maxLength: 4 }))
  .map(([upTo, items]) =>
    items.reduce(
      (progress, item, place) => (place % 2 === 0 ? addItem : dropItem)(progress, item),
      makeProgress(SEQUENCE, upTo),
    ),
  );

const sorted = (progress: Progress) => {
  const { correspondences, habits, irregularWords } = taughtOf(progress);
  return [[...correspondences].sort(), [...habits].sort(), [...irregularWords].sort()];
};

describe('moving a step', () => {
  test('keeps every step, numbered from 1, and can be taken back', () => {
    fc.assert(
      fc.property(anyStep, anyStep, (from, to) => {
        const again = moveStepOf(makeProgress(SEQUENCE), from, to);
        expect(again.sequence.steps.map(({ number }) => number)).toEqual(
          SEQUENCE.steps.map(({ number }) => number),
        );
        expect(again.sequence.steps[to - 1]?.title).toBe(SEQUENCE.steps[from - 1]?.title);
        expect(moveStepOf(again, to, from).sequence).toEqual(SEQUENCE);
      }),
    );
  });

  test('never changes what was taught', () => {
    fc.assert(
      fc.property(anyProgress, anyStep, anyStep, (progress, from, to) => {
        expect(sorted(moveStepOf(progress, from, to))).toEqual(sorted(progress));
      }),
    );
  });

  test('an untaught step above the line is marked not yet; a taught one below it, known', () => {
    const up = moveStepOf(makeProgress(SEQUENCE, 24), 34, 3);
    expect(up.upTo).toBe(25);
    expect(up.dropped).toEqual(SEQUENCE.steps[33]?.items);
    const down = moveStepOf(makeProgress(SEQUENCE, 24), 3, 34);
    expect(down.upTo).toBe(23);
    expect(down.added).toEqual(SEQUENCE.steps[2]?.items);
  });

  test('outside the order changes nothing', () => {
    const progress = makeProgress(SEQUENCE);
    expect(moveStepOf(progress, 0, 3)).toBe(progress);
    expect(moveStepOf(progress, 3, last + 1)).toBe(progress);
    expect(moveStepOf(progress, 1.5, 3)).toBe(progress);
  });

  test('never changes the value given', () => {
    const progress = Object.freeze(makeProgress(SEQUENCE, 5));
    moveStepOf(progress, 2, 4);
    expect(progress).toEqual(makeProgress(SEQUENCE, 5));
  });
});

describe('moving a stage', () => {
  test('moves its steps together, and never changes what was taught', () => {
    fc.assert(
      fc.property(anyProgress, anyStage, anyStage, (progress, from, to) => {
        const after = moveStageOf(progress, from, to);
        expect(stagesOf(after.sequence.steps)[to]?.stage).toBe(stages[from]?.stage);
        expect(sorted(after)).toEqual(sorted(progress));
      }),
    );
  });

  test('outside the order changes nothing', () => {
    const progress = makeProgress(SEQUENCE);
    expect(moveStageOf(progress, 0, stages.length)).toBe(progress);
    expect(moveStageOf(progress, -1, 2)).toBe(progress);
  });
});

describe('naming a stage', () => {
  const namesOf = ({ sequence }: Progress) => stagesOf(sequence.steps).map(({ stage }) => stage);
  const names = namesOf(makeProgress(SEQUENCE));

  test('changes its name alone, and never what was taught', () => {
    fc.assert(
      fc.property(anyProgress, anyStage, (progress, place) => {
        const next = renameStageOf(progress, place, ' Our first weeks ');
        expect(namesOf(next)).toEqual(names.with(place, 'Our first weeks'));
        expect(sorted(next)).toEqual(sorted(progress));
        expect(next.upTo).toBe(progress.upTo);
      }),
    );
  });

  test('begins a new one with any step; the rest of its stage goes with it', () => {
    fc.assert(
      fc.property(anyProgress, anyStep, (progress, number) => {
        const next = beginStageAt(progress, number, 'After the break');
        const run = stagesOf(next.sequence.steps).find(({ stage }) => stage === 'After the break');
        const was = SEQUENCE.steps[number - 1]?.stage;
        const rest = SEQUENCE.steps.filter((step) => step.stage === was && step.number >= number);
        expect(run?.steps.map(({ title }) => title)).toEqual(rest.map(({ title }) => title));
        expect(sorted(next)).toEqual(sorted(progress));
      }),
    );
  });

  test.each([
    ['an empty name', 0, '  '],
    ['the name it has', 0, names[0] as string],
    ['no such stage', names.length, 'x'],
  ])('%s changes nothing', (_, place, name) => {
    const progress = makeProgress(SEQUENCE, 12);
    expect(renameStageOf(progress, place, name)).toBe(progress);
  });
});
