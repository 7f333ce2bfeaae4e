import { describe, expect, it } from 'vitest';
import {
  type CardId,
  graphemeOf,
  isCardId,
  isSightId,
  lettersShown,
  makeCardId,
  makeGuessedId,
  makeSightId,
  parseCardId,
  soundsOf,
} from './card-id.ts';
import { CORRESPONDENCES } from './correspondences.ts';

describe('a card by its name', () => {
  it.each<[CardId, string, string, readonly string[]]>([
    ['sh=SH', 'sh', 'sh', ['SH']],
    ['qu=K+W', 'qu', 'qu', ['K', 'W']],
    ['a_e=EY', 'a_e', 'a–e', ['EY']],
    ['b=-', 'b', 'b', []],
    ['xy=?K+S', 'xy', 'xy', ['K', 'S']],
    ['gh=?', 'gh', 'gh', []],
    ['was=sight', 'was', 'was', []],
    ['i=sight', 'i', 'I', []],
  ])('%s has the letters %s, shown as %s, and the sounds %j', (id, grapheme, shown, sounds) => {
    expect(graphemeOf(id)).toBe(grapheme);
    expect(lettersShown(id)).toBe(shown);
    expect(soundsOf(id)).toEqual(sounds);
  });

  it('says the same as every row of the tables', () => {
    for (const { id, grapheme, phonemes } of CORRESPONDENCES) {
      expect(graphemeOf(id)).toBe(grapheme);
      expect(soundsOf(id)).toEqual(phonemes);
      expect(makeCardId(grapheme, phonemes)).toBe(id);
      expect(parseCardId(id)).toEqual({ grapheme, phonemes });
    }
  });

  it('is a word known by sight where it says so, and no other card is', () => {
    expect(makeSightId('was')).toBe('was=sight');
    expect(isSightId('was=sight')).toBe(true);
    expect(parseCardId('was=sight')).toBeNull();
    expect(CORRESPONDENCES.filter(({ id }) => isSightId(id))).toEqual([]);
    expect(isSightId('sight')).toBe(false);
  });

  it('is told from other text by its sign, and its sounds are those there are', () => {
    expect(isCardId('sh')).toBe(false);
    expect(isCardId(makeGuessedId('xy', ['K', 'S']))).toBe(true);
    expect(parseCardId(makeGuessedId('xy', ['K', 'S']))).toBeNull();
    expect(parseCardId('sh=SSH')).toBeNull();
  });
});
