import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseItem } from './item.ts';
import { editDistance, nearMisses } from './near-misses.ts';

describe('edit distance', () => {
  // CA → ABC is 3 under optimal string alignment (2 under full Damerau–Levenshtein): Boytsov 2011,
  // Indexing methods for approximate dictionary searching, from memory.
  test.each([
    ['kitten', 'sitting', 3], // Wagner & Fischer's usual example, from memory
    ['hs', 'sh', 1],
    ['ca', 'abc', 3],
    ['', 'sh', 2],
    ['sh', 'sh', 0],
  ])('%s and %s are %i apart', (left, right, distance) => {
    expect(editDistance(left, right)).toBe(distance);
  });

  test('is the same both ways and 0 only for equal strings', () => {
    const text = fc.string({ maxLength: 6 });
    fc.assert(
      fc.property(text, text, (left, right) => {
        expect(editDistance(left, right)).toBe(editDistance(right, left));
        expect(editDistance(left, right) === 0).toBe(left === right);
      }),
    );
  });
});

describe('near misses', () => {
  test.each([
    ['hs', 'sh'],
    ['tcch', 'tch'],
    ['dgee', 'dge'],
    ['ea=EE', 'ea=EH'],
    ['shwa', 'schwa'],
    ['habit:shwa', 'habit:schwa'],
    ['long-word', 'long-words'],
    ['said', 'word:said'],
  ])('for %s offer %s', (text, meant) => {
    expect(nearMisses(text)).toContain(meant);
  });

  test('a sound that these letters never have brings up the sounds they have', () => {
    expect(nearMisses('sh=K')).toEqual(['sh=SH']);
  });

  test('nothing is offered for what resembles nothing', () => {
    expect(nearMisses('1234567')).toEqual([]);
  });

  test('whatever is offered can be typed', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 12 }), (text) => {
        for (const near of nearMisses(text)) expect(parseItem(near)).toHaveProperty('item');
        expect(nearMisses(text).length).toBeLessThanOrEqual(3);
      }),
    );
  });
});
