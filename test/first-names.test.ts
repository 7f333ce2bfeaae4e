import { expect, it } from 'vitest';
import { isFirstName } from '../core/words/first-names.ts';
import { builtLexicon } from './built-lexicon.ts';
import { readFixture } from './fixture.ts';

/** Of that list: titles, particles and dictionary words, one that the screen asks about, one that sounds like *cat*. */
const HARDLY_NAMES = [
  'axe',
  'butch',
  'che',
  'cos',
  'de',
  'der',
  'dick',
  'el',
  'gran',
  'kat',
  'la',
  'si',
];

// Moby names that film subtitles have at least a hundred times; source in test/fixtures/README.md.
it('every first name that is often heard is known as one, or is a word that is judged as the word', () => {
  const names = readFixture('first-names-heard.tsv').map(({ name = '' }) => name);
  expect(names.length).toBeGreaterThan(400);
  const missed = names.filter((name) => !isFirstName(name) && builtLexicon.indexOf(name) < 0);
  expect(missed).toEqual(HARDLY_NAMES);
});
