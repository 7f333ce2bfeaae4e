import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CardId } from '../language/card-id.ts';
import { SEQUENCE } from './built-in.ts';
import { addItem, dropItem, makeProgress, setStep, taughtOf } from './progress.ts';
import type { Item } from './sequence.ts';
import { taughtUpTo } from './teach.ts';

const last = SEQUENCE.steps.length;
const anyStep = fc.integer({ min: 1, max: last });
const anyItem = fc.constantFrom(...SEQUENCE.steps.flatMap(({ items }) => items));
const card = (id: CardId): Item => ({ kind: 'card', id });

describe('where a group stands', () => {
  test('is what was taught up to the step, when nothing was added or dropped', () => {
    fc.assert(
      fc.property(anyStep, (step) => {
        expect(taughtOf(makeProgress(SEQUENCE, step))).toEqual(taughtUpTo(SEQUENCE, step));
      }),
    );
  });

  test('is held to the ends of the order', () => {
    expect(makeProgress(SEQUENCE, -3).upTo).toBe(0);
    expect(makeProgress(SEQUENCE, 9999).upTo).toBe(last);
    expect(makeProgress(SEQUENCE, Number.NaN).upTo).toBe(0);
  });

  test('more steps never take anything away', () => {
    fc.assert(
      fc.property(anyStep, anyStep, (one, other) => {
        const less = taughtUpTo(SEQUENCE, Math.min(one, other));
        const more = taughtUpTo(SEQUENCE, Math.max(one, other));
        expect([...less.correspondences].every((id) => more.correspondences.has(id))).toBe(true);
        expect([...less.habits].every((habit) => more.habits.has(habit))).toBe(true);
      }),
    );
  });
});

describe('single items', () => {
  test('that a newer version knows are left out', () => {
    const here = makeProgress(SEQUENCE, 9);
    expect(taughtOf({ ...here, added: [card('zz=QQ')] })).toEqual(taughtOf(here));
  });

  test('added are taught, dropped are not; the last word counts', () => {
    fc.assert(
      fc.property(anyStep, anyItem, (step, item) => {
        const progress = makeProgress(SEQUENCE, step);
        const has = (taught: ReturnType<typeof taughtOf>): boolean =>
          item.kind === 'card'
            ? taught.correspondences.has(item.id)
            : item.kind === 'habit'
              ? taught.habits.has(item.habit)
              : taught.irregularWords.has(item.word);
        expect(has(taughtOf(addItem(dropItem(progress, item), item)))).toBe(true);
        expect(has(taughtOf(dropItem(addItem(progress, item), item)))).toBe(false);
      }),
    );
  });

  test('stay when the step is set again', () => {
    const progress = dropItem(addItem(makeProgress(SEQUENCE, 5), card('oy=OY')), card('n=N'));
    const later = setStep(setStep(progress, 60), 5);
    expect(later).toEqual(progress);
  });

  test('are listed once, and only where they change something', () => {
    const progress = makeProgress(SEQUENCE, last);
    expect(addItem(progress, card('n=N')).added).toEqual([]);
    const twice = dropItem(dropItem(progress, card('n=N')), card('n=N'));
    expect(twice.dropped).toHaveLength(1);
  });

  test('a cluster card goes with a letter that was dropped', () => {
    const taught = taughtOf(dropItem(makeProgress(SEQUENCE, last), card('t=T')));
    expect(taught.correspondences.has('st=S+T')).toBe(false);
    expect(taught.correspondences.has('sp=S+P')).toBe(true);
  });

  test('the value given is never changed', () => {
    const progress = Object.freeze(makeProgress(SEQUENCE, 5));
    addItem(progress, card('oy=OY'));
    dropItem(progress, card('n=N'));
    setStep(progress, 9);
    expect(progress).toEqual(makeProgress(SEQUENCE, 5));
  });
});
