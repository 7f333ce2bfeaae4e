import { describe, expect, test } from 'vitest';
import { guessCards } from '../core/language/guess.ts';
import type { Reading } from '../core/language/reading.ts';
import { builtLexicon } from './built-lexicon.ts';

/** The ordinary reading of a listed word. */
function reading(word: string): Reading {
  const [first] = builtLexicon.readings(builtLexicon.indexOf(word));
  if (!first) throw new Error(`${word} is not in the list.`);
  return first;
}

const divided = (word: string) =>
  reading(word)
    .syllables.map(({ from, to }) => word.slice(from, to))
    .join('·');
const cards = (word: string) => reading(word).cards.map(({ grapheme }) => grapheme);
const irregular = (word: string) =>
  reading(word)
    .cards.filter(({ regular }) => !regular)
    .map(({ id }) => id);

// Divisions as American dictionaries print them and as they are taught, from memory; each was once wrong here.
describe('division', () => {
  test.each(
    `be·tween re·spond re·spect de·stroy re·store re·strict de·scribe pre·scribe be·stow de·spite re·spon·si·ble
     growl·ing load·ed jump·er troop·er pris·on·er hos·pi·tal com·pu·ter vil·lag·er sneak·er
     ter·ror ter·ror·ize op·er·ate op·er·a·tor gen·er·a·tor clev·er clev·er·er
     is·land bis·cuit cir·cuit bu·reau court·ship out·shine false·hood ear·ring sole·ly heif·er se·cret·ly
     tour·ism crit·i·cism bap·tism an·swer a·ward re·ward`
      .trim()
      .split(/\s+/),
  )('%s', (expected) => {
    expect(divided(expected.replaceAll('·', ''))).toBe(expected);
  });
});

describe('what is regular', () => {
  test.each(
    'between respond respect destroy restore award reward toward forewarned analyze paralyze vague rogue plague tourism debt wrestle temptation identifiers inhalation growling whitewash whitewashed cheeseburger cheeseburgers hotshot makeover nightshirt racehorses wildflowers'.split(
      ' ',
    ),
  )('%s has no irregular part', (word) => {
    expect(irregular(word)).toEqual([]);
  });

  test.each([
    ['island', ['s=-']],
    ['biscuit', ['ui=IH']],
    ['circuit', ['ui=IH']],
    ['bureau', ['eau=OW']],
    ['heifer', ['ei=EH']],
    // A final e that is heard in a word of several beats, where silence is expected.
    ['acne', ['e=IY']],
    ['recipe', ['e=IY']],
    ['machete', ['e=IY']],
  ] as const)('%s has one', (word, parts) => {
    expect(irregular(word)).toEqual(parts);
  });

  test('the open e of short words and of maybe is the long one', () => {
    for (const word of ['be', 'me', 'she', 'maybe']) expect(irregular(word), word).toEqual([]);
  });
});

describe('families are read alike', () => {
  test.each([
    ['operate', 'operator', 'o p er'],
    ['terror', 'terrorize', 't e rr or'],
    ['clever', 'cleverer', 'c l e v er'],
    ['sign', 'signed', 's i gn'],
    ['sign', 'signing', 's i gn'],
    ['separate', 'separator', 's e p ar'],
    ['decorate', 'decorator', 'd e c or'],
  ])('%s and %s', (base, word, shared) => {
    const count = shared.split(' ').length;
    expect(cards(base).slice(0, count).join(' ')).toBe(shared);
    expect(cards(word).slice(0, count).join(' ')).toBe(shared);
  });

  test.each(['analyze', 'paralyze'])('%s ends in y_e and z', (word) => {
    expect(cards(word).slice(-2)).toEqual(['y_e', 'z']);
  });
});

test('the sound of -ed in a guessed word goes by the letter before it', () => {
  expect(guessCards('blonted')?.at(-1)).toBe('ed=IH+D');
  expect(guessCards('frodded')?.at(-1)).toBe('ed=IH+D');
  expect(guessCards('blomped')?.at(-1)).toBe('ed=T');
  expect(guessCards('frilled')?.at(-1)).toBe('ed=D');
});
