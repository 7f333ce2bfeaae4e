import { expect, test } from 'vitest';
import { builtLexicon } from '../../test/built-lexicon.ts';
import { easyToHard, realNeighbours } from './nonsense.ts';

test('a neighbour differs in one sound: put in, left out or changed', () => {
  // Neighbours by hand: lap, map, lack, lag, lad, lip, … of /lap/ are many; /zoiv/ has none.
  expect(realNeighbours(['L', 'AE', 'P'], builtLexicon)).toBeGreaterThan(15);
  expect(realNeighbours(['Z', 'OY', 'V'], builtLexicon)).toBe(0);
});

test('nonsense goes from short words with many real neighbours to long ones with few', () => {
  const words = [
    { word: 'zoiv', sounds: ['Z', 'OY', 'V'] },
    { word: 'strimp', sounds: ['S', 'T', 'R', 'IH', 'M', 'P'] },
    { word: 'dat', sounds: ['D', 'AE', 'T'] },
  ] as const;
  expect(easyToHard(words, builtLexicon).map(({ word }) => word)).toEqual([
    'dat',
    'zoiv',
    'strimp',
  ]);
});
