import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ROWS } from '../language/correspondences.ts';
import { type HardnessParts, hardness } from './hardness.ts';
import type { Band } from './lexicon.ts';

const ids = ROWS.map(({ id }) => id);

const parts: fc.Arbitrary<HardnessParts> = fc.record({
  band: fc.integer({ min: 1, max: 7 }) as fc.Arbitrary<Band>,
  cardIds: fc.array(fc.constantFrom(...ids), { minLength: 1, maxLength: 12 }),
  syllables: fc.integer({ min: 1, max: 6 }),
  regular: fc.boolean(),
  neighbors: fc.integer({ min: 0, max: 20 }),
});

function never(lower: (word: HardnessParts) => HardnessParts): void {
  fc.assert(
    fc.property(parts, (word) => {
      expect(hardness(lower(word))).toBeGreaterThanOrEqual(hardness(word) - 1e-9);
    }),
  );
}

describe('hardness never falls', () => {
  it('when a word is rarer', () => never((word) => ({ ...word, band: 7 })));
  it('when it has a syllable more', () =>
    never((word) => ({ ...word, syllables: word.syllables + 1 })));
  it('when it has a card more', () =>
    never((word) => ({ ...word, cardIds: [...word.cardIds, 't=T'] })));
  it('when a part of it is irregular', () => never((word) => ({ ...word, regular: false })));
  it('when it has fewer neighbors', () => never((word) => ({ ...word, neighbors: 0 })));
});

it('a short common word is easier than a long rare one', () => {
  const cat: HardnessParts = {
    band: 2,
    cardIds: ['c=K', 'a=AE', 't=T'],
    syllables: 1,
    regular: true,
    neighbors: 15,
  };
  const splendid: HardnessParts = {
    band: 5,
    cardIds: ['s=S', 'p=P', 'l=L', 'e=EH', 'n=N', 'd=D', 'i=IH', 'd=D'],
    syllables: 2,
    regular: true,
    neighbors: 0,
  };
  expect(hardness(cat)).toBeLessThan(hardness(splendid));
});
