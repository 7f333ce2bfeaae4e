import fc from 'fast-check';
import { expect, test } from 'vitest';
import { decodeMeanings } from './meanings.ts';

test('a meaning is found by its word, and nothing else is', () => {
  const meanings = decodeMeanings({ fen: 'low-lying wet land' });
  expect(meanings.meaningOf('fen')).toBe('low-lying wet land');
  expect(meanings.meaningOf('cat')).toBeNull();
  expect(meanings.meaningOf('constructor')).toBeNull();
});

test('no damaged file stops the program', () => {
  fc.assert(
    fc.property(fc.jsonValue(), fc.string(), (json, word) => {
      const meaning = decodeMeanings(json).meaningOf(word);
      expect(meaning === null || typeof meaning === 'string').toBe(true);
    }),
  );
});
