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
    ['splime', 's-p-l-i_e-m'],
    ['zeble', 'z-e-b-le'],
    ['strozzle', 's-t-r-o-zz-le'],
    ['vatch', 'v-a-tch'],
  ])('%s is %s', (word, cards) => {
    expect(graphemes(word)).toBe(cards);
  });

  // Sounds that are taught for -ed, y and a vowel at the end: common practice, no source.
  it.each([
    ['melded', 'ed=IH+D', 'after d'],
    ['zotted', 'ed=IH+D', 'after t'],
    ['zupped', 'ed=T', 'after p'],
    ['zicked', 'ed=T', 'after k'],
    ['zished', 'ed=T', 'after sh'],
    ['zatched', 'ed=T', 'after ch'],
    ['zissed', 'ed=T', 'after s'],
    ['zilled', 'ed=D', 'after l'],
    ['zagged', 'ed=D', 'after g'],
    ['zo', 'o=OW', 'a vowel at the end is long'],
    ['zi', 'i=AY', 'a vowel at the end is long'],
    ['ze', 'e=IY', 'a vowel at the end is long'],
    ['zu', 'u=UW', 'a vowel at the end is long'],
    ['zanna', 'a=AE', 'an a at the end has faded, which is no card of its own'],
    ['zot', 'o=AA', 'a vowel before a consonant is short'],
    ['zat', 'a=AE', 'a vowel before a consonant is short'],
  ])('%s has %s: %s', (word, id) => {
    expect(guessCards(word)).toContain(id);
  });

  it('holds -ed for an ending only where something stands before it', () => {
    expect(guessCards('zed')).toEqual(['z=Z', 'e=EH', 'd=D']);
    expect(guessCards('edzop')?.join(' ')).not.toContain('ed=');
    expect(guessCards('lezop')?.join(' ')).not.toContain('le=');
  });

  it('takes a word of 45 letters for one, and none of 46', () => {
    expect(guessCards('a'.repeat(45))).not.toBeNull();
    expect(guessCards('a'.repeat(46))).toBeNull();
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
