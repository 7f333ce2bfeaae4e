import fc from 'fast-check';
import { expect, test } from 'vitest';
import { CORRESPONDENCES } from '../language/correspondences.ts';
import { SEQUENCE } from './built-in.ts';
import { stepOf } from './step-of.ts';
import { taughtUpTo } from './teach.ts';

test('a card’s step is the first after which it counts as taught', () => {
  fc.assert(
    fc.property(fc.constantFrom(...CORRESPONDENCES), ({ id }) => {
      const naive = SEQUENCE.steps.find(({ number }) =>
        taughtUpTo(SEQUENCE, number).correspondences.has(id),
      );
      expect(stepOf(SEQUENCE, { kind: 'card', id })).toBe(naive?.number ?? null);
    }),
  );
});

test('words and habits have steps too; what no step teaches has none', () => {
  const step = SEQUENCE.steps.find(({ items }) => items.some(({ kind }) => kind === 'word'));
  const word = step?.items.find((item) => item.kind === 'word');
  expect(word && stepOf(SEQUENCE, word)).toBe(step?.number);
  expect(stepOf(SEQUENCE, { kind: 'habit', habit: 'schwa' })).not.toBeNull();
  expect(stepOf(SEQUENCE, { kind: 'word', word: 'constructor' })).toBeNull();
  expect(stepOf({ name: 'Empty', steps: [] }, { kind: 'card', id: 'n=N' })).toBeNull();
});
