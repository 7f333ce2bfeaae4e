import { describe, expect, test } from 'vitest';
import { builtLexicon } from '../../../test/built-lexicon.ts';
import { graphemeOf } from '../../language/card-id.ts';
import { cardsOnCard } from '../../language/syllable-card.ts';
import { laySyllables } from './lay-syllables.ts';

/** The ordinary reading of a word as syllable cards. */
function laid(word: string): readonly string[] | null {
  const [reading] = builtLexicon.readings(builtLexicon.indexOf(word));
  return reading ? laySyllables(reading) : null;
}

describe('a longer word as syllable cards', () => {
  // The division that is taught, pattern by pattern (common practice, no source).
  test.each([
    ['napkin', 'nap·kin'],
    ['rabbit', 'rab·bit'],
    ['kitten', 'kit·ten'],
    ['tiger', 'ti·ger'],
    ['robin', 'rob·in'],
    ['table', 'ta·ble'],
    ['little', 'lit·tle'],
    ['replay', 're·play'],
    ['unkind', 'un·kind'],
    ['jumping', 'jump·ing'],
    ['nation', 'na·tion'],
    ['replace', 're·place'],
    ['unhelpful', 'un·help·ful'],
  ])('%s lies as %s', (word, division) => {
    expect(
      laid(word)
        ?.map((id) => graphemeOf(id as never))
        .join('·'),
    ).toBe(division);
  });

  test('a doubled consonant lies on both cards, a faded vowel as the short one that is tried first', () => {
    expect(laid('rabbit')?.map((id) => cardsOnCard(id as never))).toEqual([
      ['r=R', 'a=AE', 'b=B'],
      ['b=B', 'i=IH', 't=T'],
    ]);
    expect(laid('kitten')?.map((id) => cardsOnCard(id as never))[1]).toEqual([
      't=T',
      'e=EH',
      'n=N',
    ]);
    expect(laid('nation')?.map((id) => cardsOnCard(id as never))[1]).toEqual([
      ...['ti=SH', 'o=AX', 'n=N'],
    ]);
  });

  test('is null where letters of one sound would be torn apart, or no card shows the letters as written', () => {
    expect(laid('napped')).toBeNull();
  });

  test('the cards spell the word, whichever it is', () => {
    let laidWords = 0;
    for (let index = 0; index < 9000; index += 7) {
      const word = builtLexicon.word(index);
      const ids = laid(word);
      if (!ids) continue;
      laidWords++;
      expect(ids.map((id) => graphemeOf(id as never)).join('')).toBe(word);
    }
    expect(laidWords).toBeGreaterThan(700);
  });
});
