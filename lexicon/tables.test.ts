import { describe, expect, test } from 'vitest';
import { parsePronunciation } from '../core/language/pronunciation.ts';
import { ADDITIONS } from './additions.ts';
import { CORRECTIONS } from './corrections.ts';
import { EDGES, FALSE_BASES } from './false-bases.ts';
import { HETERONYMS } from './heteronyms.ts';
import { choosePronunciations } from './pronunciation-choice.ts';

describe('the reviewed tables', () => {
  test.each(
    Object.entries({
      ADDITIONS,
      CORRECTIONS: Object.fromEntries(CORRECTIONS.map(([word, text]) => [word, text])),
      EDGES,
      FALSE_BASES,
      HETERONYMS,
    }),
  )('%s is sorted', (_, table) => {
    const words = Object.keys(table);
    expect(words).toEqual([...words].sort());
  });

  test('hold only sounds that the engine knows', () => {
    const written = [
      ...Object.values(ADDITIONS).filter((value) => !value.includes('+')),
      ...CORRECTIONS.map(([, pronunciation]) => pronunciation),
      ...Object.values(HETERONYMS).flat(),
    ];
    expect(written.filter((text) => !parsePronunciation(text))).toEqual([]);
  });

  test('have a stressed vowel in every word but a and the', () => {
    const weak = CORRECTIONS.filter(([, text]) => !text.includes('1'));
    expect(weak.map(([word]) => word)).toEqual(['a', 'the']);
    expect(
      Object.values(HETERONYMS)
        .flat()
        .every((text) => text.includes('1')),
    ).toBe(true);
  });

  test('give every heteronym two or three readings, all different', () => {
    for (const readings of Object.values(HETERONYMS)) {
      expect(readings.length).toBeGreaterThanOrEqual(2);
      expect(readings.length).toBeLessThanOrEqual(3);
      expect(new Set(readings).size).toBe(readings.length);
    }
  });

  test('leave no word in two of them', () => {
    const twice = CORRECTIONS.filter(([word]) => Object.hasOwn(HETERONYMS, word));
    expect(twice).toEqual([]);
  });
});

/** Common practice in dictionaries: the citation form is the strong one; senses as in any dictionary. */
describe('the ordinary pronunciation', () => {
  test.each([
    ['read', ['R EH1 D', 'R IY1 D'], 'R IY1 D'],
    ['wind', ['W AY1 N D', 'W IH1 N D'], 'W IH1 N D'],
    ['of', ['AH1 V'], 'AH1 V'],
    ['and', ['AH0 N D', 'AE1 N D'], 'AE1 N D'],
    ['family', ['F AE1 M L IY0', 'F AE1 M AH0 L IY0'], 'F AE1 M AH0 L IY0'],
    ['different', ['D IH1 F R AH0 N T', 'D IH1 F ER0 AH0 N T'], 'D IH1 F ER0 AH0 N T'],
    ['often', ['AO1 F AH0 N', 'AO1 F T AH0 N'], 'AO1 F AH0 N'],
    ['wheel', ['HH W IY1 L', 'W IY1 L'], 'W IY1 L'],
    ['spring', ['S P R IH1 NG', 'S P ER0 IH1 NG'], 'S P R IH1 NG'],
  ])('of %s, from %j, is %s', (word, variants, ordinary) => {
    expect(choosePronunciations(word, variants)[0]).toBe(ordinary);
  });

  test('is safe for words that objects know', () => {
    expect(choosePronunciations('constructor', ['K AH0 N S T R AH1 K T ER0'])).toEqual([
      'K AH0 N S T R AH1 K T ER0',
    ]);
  });
});
