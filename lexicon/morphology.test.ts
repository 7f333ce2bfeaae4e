import { describe, expect, test } from 'vitest';
import { findMorphemes } from './morphology.ts';
import { readSources } from './sources.ts';
import { readWordNet } from './wordnet.ts';

const { sizes, pronunciations } = readSources();
const wordnet = readWordNet((word) => sizes.has(word));
const finder = {
  said: (word: string) => (sizes.has(word) ? pronunciations.get(word) : undefined),
  wordnet,
};

/** The word with its edges: `·`, and `+` before an inflectional ending. */
function parts(word: string): string {
  const said = pronunciations.get(word)?.[0] as string;
  const { breaks, suffixAt } = findMorphemes(word, said, finder);
  return [...word]
    .map((letter, at) => (breaks.includes(at) ? (at === suffixAt ? '+' : '·') : '') + letter)
    .join('');
}

/** Words: National Curriculum, English Appendix 1, Years 1 and 2; their edges follow from its rules. */
describe('base and ending are found as the National Curriculum adds them', () => {
  test.each([
    'rock+s',
    'catch+es',
    'hunt+ing',
    'hunt+ed',
    'hunt+er',
    'buzz+ing',
    'jump+ed',
    'grand+er',
    'fresh+est',
    'quick+er',
    'babie+s',
    'carrie+s',
    'copie+d',
    'copi+er',
    'happi+er',
    'copy+ing',
    'hik+ing',
    'hik+ed',
    'nic+er',
    'dropp+ing',
    'dropp+ed',
    'runn+er',
    'mix+ed',
    'six+es',
    'enjoy·ment',
    'sad·ness',
    'care·ful',
    'play·ful',
    'hope·less',
    'bad·ly',
    'happi·ness',
    'un·happy',
    'un·load',
    'un·fair',
    'un·lock',
    'foot·ball',
    'play·ground',
    'bed·room',
    'black·berry',
  ])('%s', (expected) => {
    expect(parts(expected.replace(/[·+]/g, ''))).toBe(expected);
  });
});

test.each([
  ['army', 'named in the project brief'],
  ['king', 'named in the project brief'],
  ['bring', 'named in the project brief'],
  ['corner', 'said corn + er'],
  ['number', 'said numb + er by its letters'],
  ['hundred', 'ends in ed'],
  ['wicked', 'ends in ed'],
  ['sister', 'ends in er'],
  ['summer', 'said sum + er'],
  ['letter', 'said let + er'],
  ['morning', 'said morn + ing'],
  ['finish', 'said fin + ish'],
  ['chicken', 'said chick + en'],
  ['carpet', 'spelled car + pet'],
  ['father', 'spelled fat + her'],
])('%s is not cut: %s', (word) => {
  expect(parts(word)).toBe(word);
});

test('an ending that runs into its base starts no syllable of its own', () => {
  expect(['crazy', 'funny', 'taken', 'handling'].map(parts)).toEqual([
    'crazy',
    'funny',
    'taken',
    'handling',
  ]);
});

test('a split final e of a first part stays with it', () => {
  expect(['something', 'homework', 'careless'].map(parts)).toEqual([
    'some·thing',
    'home·work',
    'care·less',
  ]);
});
