import { describe, expect, it } from 'vitest';
import { guessCards, guessReading } from './guess.ts';

const graphemes = (word: string) =>
  guessReading(word)
    ?.cards.map(({ grapheme }) => grapheme)
    .join('-');

describe('a guess by letters alone', () => {
  // Names and invented words; what a teacher would cut them into is common practice, no source.
  it.each([
    ['zog', 'z-o-g'],
    ['pete', 'p-e_e-t'],
    ['shan', 'sh-a-n'],
    ['blick', 'b-l-i-ck'],
    ['kaylee', 'k-ay-l-ee'],
  ])('%s is %s', (word, cards) => {
    expect(graphemes(word)).toBe(cards);
  });

  it('divides into syllables like any word', () => {
    const reading = guessReading('zobbit');
    expect(reading?.syllables.map(({ from, to }) => 'zobbit'.slice(from, to))).toEqual([
      'zob',
      'bit',
    ]);
  });

  it('is none where a letter fits no row', () => {
    expect(guessCards('é')).toBeNull();
    expect(guessReading('q1')).toBeNull();
  });
});
