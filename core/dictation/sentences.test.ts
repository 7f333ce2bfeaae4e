import { describe, expect, test } from 'vitest';
import { builtLexicon } from '../../test/built-lexicon.ts';
import { stepOfSentence } from '../../test/sentence-step.ts';
import type { Taught } from '../language/taught.ts';
import { SEQUENCE } from '../sequence/built-in.ts';
import { taughtUpTo } from '../sequence/teach.ts';
import { needsOf } from '../words/needs.ts';
import { SCREEN_DATA } from '../words/screen-data.ts';
import { createWordScreen } from '../words/word-screen.ts';
import { isFitForClass } from './fitness.ts';
import { isWritable, sentenceWords, shows } from './needs.ts';
import { nameReading } from './sentences/names.ts';
import { SENTENCES } from './sentences.ts';

/** Asked by the plan for dictation: sentences in all, items before new ones are due, new ones a step. */
const AT_LEAST = 500;
const ITEMS_TAUGHT = 30;
const NEW_A_STEP = 3;

const taughtAt = [0, ...SEQUENCE.steps.map(({ number }) => number)].map((step) =>
  taughtUpTo(SEQUENCE, step),
);
const wordsOf = (text: string) => sentenceWords(text, builtLexicon);

function readingOf(word: string) {
  const index = builtLexicon.indexOf(word);
  return index >= 0 ? builtLexicon.readings(index)[0] : (nameReading(word) ?? undefined);
}

describe('the sentences', () => {
  test('are at least five hundred, and none stands twice', () => {
    expect(SENTENCES.length).toBeGreaterThanOrEqual(AT_LEAST);
    const bare = SENTENCES.map((text) => text.toLowerCase().replace(/[^a-z ]/g, ''));
    expect(bare.filter((text, at) => bare.indexOf(text) !== at)).toEqual([]);
  });

  test('have 2 to 14 words, begin with a capital and end with . ? or !', () => {
    const odd = SENTENCES.filter((text) => {
      const { length } = text.split(' ');
      return length < 2 || length > 14 || !/^"?[A-Z].*[.?!]$/.test(text);
    });
    expect(odd).toEqual([]);
  });

  test('hold only letters, single spaces and plain marks, each where it belongs', () => {
    const odd = SENTENCES.filter(
      (text) =>
        !/^[A-Za-z ,.?!:;"'-]+$/.test(text) ||
        / {2}| [,.?!:;]|[,.?!:;][A-Za-z]/.test(text) ||
        (text.match(/"/g) ?? []).length % 2 !== 0,
    );
    expect(odd).toEqual([]);
  });

  test('use only words of the word list, listed names, and words taught by heart', () => {
    const byHeart = (taughtAt.at(-1) as Taught).irregularWords;
    const unknown = SENTENCES.flatMap((text) =>
      wordsOf(text)
        .filter(({ word, needs }) => needs === null && !byHeart.has(word))
        .map(({ word }) => `${word}: ${text}`),
    );
    expect(unknown).toEqual([]);
  });

  test('hold no word that the word screen stops or asks about', () => {
    const screen = createWordScreen(SCREEN_DATA);
    const doubtful = new Set(
      SENTENCES.flatMap(wordsOf)
        .map(({ word }) => word)
        .filter((word) => !isFitForClass(word, builtLexicon, screen)),
    );
    expect([...doubtful]).toEqual([]);
  });

  test('are each decodable from a step of the built-in order on, and not one step before', () => {
    const wrong = SENTENCES.filter((text) => {
      const { step } = stepOfSentence(text, SEQUENCE, builtLexicon);
      return step === null || !isReadAt(text, step) || isReadAt(text, step - 1);
    });
    expect(wrong).toEqual([]);
  });

  test('give at least three usable new ones at each step once thirty items are taught', () => {
    let items = 0;
    const lacking: string[] = [];
    for (const step of SEQUENCE.steps) {
      items += step.items.length;
      if (items < ITEMS_TAUGHT) continue;
      const taught = taughtAt[step.number] as Taught;
      const usable = SENTENCES.filter((text) => {
        const words = wordsOf(text);
        const isNew = words.some((word) => step.items.some((item) => shows(word, item)));
        return isNew && words.every((word) => isWritable(word, taught));
      });
      if (usable.length < NEW_A_STEP) {
        lacking.push(`${step.number} ${step.title}: ${usable.length} (${usable.join(' ')})`);
      }
    }
    expect(items).toBeGreaterThan(ITEMS_TAUGHT);
    expect(lacking, 'steps that lack sentences').toEqual([]);
  });
});

/** By what each reading asks for to be written, apart from how the step was found. */
function isReadAt(text: string, step: number): boolean {
  const taught = taughtAt[step] as Taught;
  return wordsOf(text).every(({ word }) => {
    if (taught.irregularWords.has(word)) return true;
    const reading = readingOf(word);
    if (!reading?.cards.every(({ regular }) => regular)) return false;
    const { ids, habits } = needsOf(
      reading.cards.map(({ id }) => id),
      reading.syllables.length,
    );
    const asks = habits.map((habit) => (habit === 'flex' ? 'schwa' : habit));
    return (
      ids.every((id) => taught.correspondences.has(id)) &&
      asks.every((habit) => taught.habits.has(habit))
    );
  });
}
