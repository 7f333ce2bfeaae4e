import { expect, test } from 'vitest';
import type { CardId } from '../language/card-id.ts';
import { gapsOf } from './gaps.ts';
import { addItem, dropItem, makeProgress, numberSteps } from './progress.ts';
import type { Item, Sequence } from './sequence.ts';

const card = (id: CardId): Item => ({ kind: 'card', id });
const word = (text: string): Item => ({ kind: 'word', word: text });
const order: Sequence = {
  name: 'Small',
  steps: numberSteps(
    [[card('m=M'), word('the')], [card('a=AE'), card('t=T')], [word('said')], [card('s=S')]].map(
      (items) => ({ number: 0, stage: '', grade: 'K', title: '', items, why: '' }),
    ),
  ),
};

const numbers = (progress: Parameters<typeof gapsOf>[0]) =>
  gapsOf(progress).map(({ number }) => number);

test('a step is a gap when none of its spellings was taught and it lies above the line', () => {
  const here = makeProgress(order, 3);
  expect(numbers(here)).toEqual([]);
  expect(numbers(dropItem(here, card('m=M')))).toEqual([1]);
  expect(numbers(dropItem(here, word('the')))).toEqual([]);
  expect(numbers(dropItem(here, card('a=AE')))).toEqual([]);
  expect(numbers(dropItem(dropItem(here, card('a=AE')), card('t=T')))).toEqual([2]);
  expect(numbers(dropItem(here, word('said')))).toEqual([]);
  expect(numbers(dropItem(here, card('s=S')))).toEqual([]);
  expect(numbers(addItem(dropItem(here, card('m=M')), card('m=M')))).toEqual([]);
});
