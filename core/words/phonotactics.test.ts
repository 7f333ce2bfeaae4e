import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { builtLexicon } from '../../test/built-lexicon.ts';
import { readFixture } from '../../test/fixture.ts';
import type { Phoneme } from '../language/phonemes.ts';
import { countPositions, phonotacticScore, positionalProbability } from './phonotactics.ts';

/**
 * The worked example of a published implementation of Vitevitch & Luce 2004, and the values that
 * its authors test it by; their words, their frequencies. Logarithms of frequencies are summed; the
 * base does not matter.
 */
const rows = readFixture('phonotactic-probability.tsv');

function published(corpus: string) {
  return rows
    .filter((row) => row.corpus === corpus)
    .map(({ item = '', sounds = '', frequency, single = '', pair = '' }) => ({
      item,
      sounds: sounds.split(' '),
      weight: Math.log(Number(frequency)),
      single,
      pair,
    }));
}

describe('positional probability', () => {
  it('of blick by pairs is the published 0.43795', () => {
    const words = published('four words');
    const blick = words.find(({ item }) => item === 'blick');
    const probability = positionalProbability(blick?.sounds ?? [], countPositions(words, 2));
    expect(probability.toFixed(5)).toBe(blick?.pair);
    expect(blick?.pair).toBe('0.43795');
  });

  it('does not depend on the base of the logarithm', () => {
    const words = published('four words');
    const decimal = words.map((word) => ({ ...word, weight: word.weight / Math.LN10 }));
    for (const { sounds } of words) {
      const natural = positionalProbability(sounds, countPositions(words, 2));
      expect(positionalProbability(sounds, countPositions(decimal, 2))).toBeCloseTo(natural, 12);
    }
  });

  const fifteen = published('fifteen words');
  const bySingle = countPositions(fifteen, 1);
  const byPair = countPositions(fifteen, 2);
  it.each(fifteen.filter(({ single }) => single !== ''))(
    'of $item is the published $single by single sounds and $pair by pairs',
    ({ sounds, single, pair }) => {
      expect(positionalProbability(sounds, bySingle).toFixed(single.length - 2)).toBe(single);
      expect(positionalProbability(sounds, byPair).toFixed(pair.length - 2)).toBe(pair);
    },
  );

  it('lies between 0 and 1, and is 0 where no word reaches', () => {
    const sound = fc.constantFrom('b', 'l', 'k', 'ɪ', 'ɛ', 'm');
    const word = fc.record({
      sounds: fc.array(sound, { maxLength: 6 }),
      weight: fc.double({ min: 0, max: 20, noNaN: true }),
    });
    fc.assert(
      fc.property(
        fc.array(word),
        fc.array(sound, { maxLength: 9 }),
        fc.constantFrom(1 as const, 2 as const),
        (words, sounds, span) => {
          const probability = positionalProbability(sounds, countPositions(words, span));
          expect(probability).toBeGreaterThanOrEqual(0);
          expect(probability).toBeLessThanOrEqual(1 + 1e-9);
          if (words.length === 0) expect(probability).toBe(0);
        },
      ),
    );
  });
});

describe('the score of a nonsense word', () => {
  const score = (sounds: string) => phonotacticScore(sounds.split(' ') as Phoneme[], builtLexicon);

  // The classic pair (Chomsky & Halle 1965), and others of its kind: common practice.
  it.each([
    ['B L IH K', 'B N IH K'],
    ['S T IH N', 'S R IH N'],
    ['M AE P', 'ZH AE P'],
    ['K AE S T', 'K AE S F'],
  ])('%s is higher than %s', (likely, unlikely) => {
    expect(score(likely)).toBeGreaterThan(score(unlikely));
  });

  it('is 0 without a pair of sounds', () => {
    expect(phonotacticScore([], builtLexicon)).toBe(0);
    expect(score('AY')).toBe(0);
  });
});
