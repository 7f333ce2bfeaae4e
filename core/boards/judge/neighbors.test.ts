import fc from 'fast-check';
import { expect, test } from 'vitest';
import { builtLexicon } from '../../../test/built-lexicon.ts';
import { PHONEMES, type Phoneme } from '../../language/phonemes.ts';
import { soundsOfCards } from '../../words/phonotactics.ts';
import { realNeighbors } from './neighbors.ts';

/** Familiar words by their sounds, as plain rows. */
const familiar = Array.from({ length: builtLexicon.size }, (_, index) => index)
  .filter((index) => builtLexicon.band(index) <= 6)
  .flatMap((index) => {
    const sounds = soundsOfCards(builtLexicon.cardIds(index));
    return sounds && sounds.length <= 9 ? [sounds] : [];
  });

/** One sound put in, left out or changed: the two rows are alike up to it and after it. */
function isNeighbor(one: readonly string[], other: readonly string[]): boolean {
  const [short, long] = one.length <= other.length ? [one, other] : [other, one];
  if (long.length - short.length > 1) return false;
  let head = 0;
  while (head < short.length && short[head] === long[head]) head++;
  let tail = 0;
  while (tail < short.length - head && short.at(-1 - tail) === long.at(-1 - tail)) tail++;
  const left = short.length - head - tail;
  return long.length === short.length ? left === 1 : left === 0;
}

test('neighbors are the words that differ in one sound: as many as a plain search finds', () => {
  const sounds = fc.array(fc.constantFrom(...PHONEMES), { minLength: 0, maxLength: 6 });
  const nearWords = fc
    .tuple(fc.constantFrom(...familiar), fc.nat(), fc.constantFrom(...PHONEMES))
    .map(([word, at, phoneme]) => word.with(at % word.length, phoneme));
  fc.assert(
    fc.property(fc.oneof(sounds, nearWords), (word) => {
      const plain = familiar.filter((other) => isNeighbor(word, other)).length;
      expect(realNeighbors(word, builtLexicon)).toBe(plain);
    }),
    { numRuns: 150 },
  );
});

test('a word of a dense neighborhood has many, one of strange sounds none', () => {
  const count = (text: string) => realNeighbors(text.split(' ') as Phoneme[], builtLexicon);
  // By hand, of /lap/: map, tap, cap, nap, gap, sap, rap, wrap, zap, lip, loop, leap, lab, lack, lag,
  // lad, lamb, last, slap, clap, flap, lapse.
  expect(count('L AE P')).toBeGreaterThan(15);
  expect(count('Z OY V')).toBe(0);
});
