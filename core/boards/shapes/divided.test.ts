import { describe, expect, test } from 'vitest';
import { builtLexicon } from '../../../test/built-lexicon.ts';
import { cardsOnCard } from '../../language/syllable-card.ts';
import type { Flip } from './board.ts';
import { dividedWord, flexedVowel, syllableTypes } from './divided.ts';
import { laySyllables } from './lay-syllables.ts';

/** A word of the list as a flip of a board of syllables. */
function flipOf(word: string): Flip {
  const [reading] = builtLexicon.readings(builtLexicon.indexOf(word));
  const syllables = (reading && laySyllables(reading)) ?? [];
  const cards = syllables.map(cardsOnCard);
  const joints = cards.slice(0, -1).map((_, at) => cards.slice(0, at + 1).flat().length);
  return { cards: cards.flat(), joints, word, sounds: reading?.sounds ?? [], kind: 'real' };
}

describe('a word laid in syllables', () => {
  // Division, types and fading vowels as they are taught (common practice, no source).
  test.each([
    ['kitten', 'kit·ten', ['closed', 'closed'], 'e'],
    ['napkin', 'nap·kin', ['closed', 'closed'], null],
    ['tiger', 'ti·ger', ['open', 'r'], null],
    ['table', 'ta·ble', ['open', 'cle'], null],
    ['replace', 're·place', ['open', 'vce'], null],
    ['delay', 'de·lay', ['open', 'team'], null],
    ['nation', 'na·tion', ['open', 'other'], null],
    ['basket', 'bas·ket', ['closed', 'closed'], 'e'],
    ['problem', 'prob·lem', ['closed', 'closed'], 'e'],
  ] as const)('%s: %s', (word, divided, types, flexed) => {
    const flip = flipOf(word);
    expect([dividedWord(flip), syllableTypes(flip)]).toEqual([divided, types]);
    expect(flexedVowel(flip, builtLexicon)).toBe(flexed);
  });

  test('is nothing special where it was laid card by card', () => {
    const flip: Flip = { cards: ['p=P', 'i=IH', 'n=N'], word: 'pin', sounds: [], kind: 'real' };
    expect([dividedWord(flip), syllableTypes(flip), flexedVowel(flip, builtLexicon)]).toEqual([
      ...['pin', [], null],
    ]);
  });
});
