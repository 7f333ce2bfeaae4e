import { describe, expect, test } from 'vitest';
import { addEnding, basesOf, joinParts } from './inflected.ts';

/**
 * The sound rules are those of England's National Curriculum, English Appendix
 * 1 (2013), rows "Adding s and es" and "Adding -ing -ed": s sounds S or Z, es
 * adds a syllable, ed sounds IH D, D or T. Pronunciations: CMUdict.
 */
describe('a regular ending sounds as its base lets it', () => {
  test.each([
    ['K AE1 T', 's', 'K AE1 T S'],
    ['D AO1 G', 's', 'D AO1 G Z'],
    ['K AE1 CH', 's', 'K AE1 CH IH0 Z'],
    ['HH AH1 N T', 'ed', 'HH AH1 N T IH0 D'],
    ['B AH1 Z', 'ed', 'B AH1 Z D'],
    ['JH AH1 M P', 'ed', 'JH AH1 M P T'],
    ['HH AH1 N T', 'ing', 'HH AH1 N T IH0 NG'],
  ] as const)('%s + %s = %s', (base, ending, whole) => {
    expect(addEnding(base, ending)).toBe(whole);
  });
});

test('a compound keeps its first stress, and the second part has the lesser one', () => {
  expect(joinParts('F AA1 R M', 'Y AA1 R D')).toBe('F AA1 R M Y AA2 R D');
});

/** Base and inflected spelling: National Curriculum rows of Year 1 and Year 2. */
test.each([
  ['cats', 'cat'],
  ['catches', 'catch'],
  ['flies', 'fly'],
  ['copied', 'copy'],
  ['hiking', 'hike'],
  ['patted', 'pat'],
  ['humming', 'hum'],
  ['mixing', 'mix'],
])('%s may come from %s', (word, base) => {
  expect(basesOf(word).map(([spelling]) => spelling)).toContain(base);
});

test('a word in ss is no plural', () => {
  expect(basesOf('glass')).toEqual([]);
});
