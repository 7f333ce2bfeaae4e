import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { builtLexicon } from '../../test/built-lexicon.ts';
import { makePlainScreen } from '../../test/plain-screen.ts';
import type { CardId } from '../language/card-id.ts';
import { SEQUENCE } from '../sequence/built-in.ts';
import { taughtUpTo } from '../sequence/teach.ts';
import { obstacles } from '../words/decodable.ts';
import { SCREEN_DATA } from '../words/screen-data.ts';
import { createWordScreen } from '../words/word-screen.ts';
import { type DictationSources, dictationFor, newestItems } from './dictation.ts';
import { holdsCard, isWritable, sentenceWords, shows } from './needs.ts';
import { SENTENCES } from './sentences.ts';

/** The dictation after a step of an order: its newest items first. */
const specAtStep = (sequence: typeof SEQUENCE, step: number, seed: number) => ({
  taught: taughtUpTo(sequence, step),
  newest: newestItems(sequence, step),
  seed,
});

const sources: DictationSources = {
  lexicon: builtLexicon,
  screen: createWordScreen(SCREEN_DATA),
  sentences: SENTENCES,
};
const last = SEQUENCE.steps.length;
const steps = fc.integer({ min: 10, max: last });
const seeds = fc.integer({ min: 0, max: 2 ** 31 });

const wordsOf = (text: string) => sentenceWords(text, builtLexicon);

/** One dictation for each step from the tenth on. */
const everyStep = SEQUENCE.steps
  .filter(({ number }) => number >= 10)
  .map(({ number }) => ({
    step: number,
    ...dictationFor(specAtStep(SEQUENCE, number, 1), sources),
  }));

describe('a dictation', () => {
  test('holds none of the cards to avoid, a cluster as its parts in a row either', () => {
    const avoid: readonly CardId[] = ['st=S+T', 'i=IH'];
    for (const seed of [1, 2, 3]) {
      const { words, sentences } = dictationFor(
        { ...specAtStep(SEQUENCE, 38, seed), avoid, words: 15 },
        sources,
      );
      expect(words).toHaveLength(15);
      expect(sentences).toHaveLength(2);
      for (const { text } of [...words, ...sentences]) {
        for (const { cardIds } of wordsOf(text)) {
          expect(
            avoid.some((card) => holdsCard(cardIds, card)),
            text,
          ).toBe(false);
        }
      }
    }
  });

  test('is full at every step from the tenth on: six words and two sentences', () => {
    const short: string[] = [];
    for (const { step, words, sentences, shortfall } of everyStep) {
      if (words.length < 6 || sentences.length < 2) short.push(`${step}: ${shortfall}`);
      else expect(shortfall).toBeNull();
    }
    expect(short).toEqual([]);
  });

  test('is the same for the same request, and another seed gives another one', () => {
    const spec = specAtStep(SEQUENCE, 60, 7);
    expect(dictationFor(spec, sources)).toEqual(dictationFor(spec, sources));
    const texts = [1, 2, 3, 4].map((seed) =>
      JSON.stringify(dictationFor({ ...spec, seed }, sources)),
    );
    expect(new Set(texts).size).toBeGreaterThan(1);
  });

  test('asks only for what was taught', () => {
    fc.assert(
      fc.property(steps, seeds, (step, seed) => {
        const { words, sentences } = dictationFor(specAtStep(SEQUENCE, step, seed), sources);
        const taught = taughtUpTo(SEQUENCE, step);
        for (const { text } of words) {
          const index = builtLexicon.indexOf(text);
          if (index >= 0) expect(obstacles(index, builtLexicon, taught), text).toEqual([]);
        }
        for (const { text } of sentences) {
          expect(wordsOf(text).filter((word) => !isWritable(word, taught))).toEqual([]);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('has no word twice and no two forms of one word', () => {
    fc.assert(
      fc.property(steps, seeds, (step, seed) => {
        const { words } = dictationFor(specAtStep(SEQUENCE, step, seed), sources);
        const texts = words.map(({ text }) => text);
        const doubled = texts.filter((text) =>
          texts.some((other) => other !== text && [`${text}s`, `${text}ed`].includes(other)),
        );
        expect(doubled).toEqual([]);
        expect(new Set(texts).size).toBe(texts.length);
      }),
      { numRuns: 60 },
    );
  });

  test('gives the newest items at least half of the words, at every step from the tenth on', () => {
    const poor: string[] = [];
    for (const { step, words } of everyStep) {
      const newest = newestItems(SEQUENCE, step);
      const fresh = words.filter(({ text }) =>
        wordsOf(text).some((word) => newest.some((item) => shows(word, item))),
      );
      expect(words.filter(({ isNew }) => isNew)).toEqual(fresh);
      if (fresh.length * 2 < words.length) poor.push(`${step} ${SEQUENCE.steps[step - 1]?.title}`);
    }
    expect(poor).toEqual([]);
    fc.assert(
      fc.property(steps, seeds, (step, seed) => {
        const { words } = dictationFor(specAtStep(SEQUENCE, step, seed), sources);
        expect(words.filter(({ isNew }) => isNew).length * 2).toBeGreaterThanOrEqual(words.length);
      }),
      { numRuns: 40 },
    );
  });

  test('puts sentences with a newest item first', () => {
    fc.assert(
      fc.property(steps, seeds, (step, seed) => {
        const spec = { ...specAtStep(SEQUENCE, step, seed), sentences: 8 };
        const marks = dictationFor(spec, sources).sentences.map(({ isNew }) => isNew);
        expect(marks).toEqual([...marks].sort((left, right) => Number(right) - Number(left)));
      }),
      { numRuns: 30 },
    );
  });

  test('leaves out a word that the screen stops or asks about, and sentences with it', () => {
    const spec = { ...specAtStep(SEQUENCE, 40, 5), words: 400, sentences: 400 };
    const first = dictationFor(spec, sources);
    const [stopped = '', asked = ''] = first.words.map(({ text }) => text);
    const inSentence = wordsOf(first.sentences[0]?.text ?? '')[0]?.word ?? '';
    const screen = makePlainScreen([stopped, inSentence], [asked]);
    const { words, sentences } = dictationFor(spec, { ...sources, screen });
    const left = [...words, ...sentences].flatMap(({ text }) => wordsOf(text));
    const shown = new Set(left.map(({ word }) => word));
    expect(sentences.length).toBeGreaterThan(0);
    for (const word of [stopped, asked, inSentence]) expect(shown.has(word), word).toBe(false);
  });

  test('says so in plain words when too little was taught', () => {
    const { words, sentences, shortfall } = dictationFor(specAtStep(SEQUENCE, 1, 1), sources);
    expect(words).toEqual([]);
    expect(sentences).toEqual([]);
    expect(shortfall).toMatch(/words and sentences/);
  });
});

test('what spelling papers showed is practiced, and says so; half is still the newest', () => {
  const spec = {
    ...specAtStep(SEQUENCE, 60, 3),
    practice: ['sh=SH', 'i_e=AY'] satisfies readonly CardId[],
  };
  const { words, sentences } = dictationFor(spec, sources);
  const practiced = words.filter(({ practices }) => practices !== undefined);
  expect(words.filter(({ isNew }) => isNew).length).toBeGreaterThanOrEqual(3);
  expect(new Set(practiced.map(({ practices }) => practices))).toEqual(new Set(spec.practice));
  for (const { text, practices } of practiced) {
    expect(builtLexicon.cardIds(builtLexicon.indexOf(text))).toContain(practices);
  }
  expect(sentences[0]).toMatchObject({ isNew: true });
  const practicing = sentences.find(({ practices }) => practices !== undefined);
  expect(spec.practice).toContain(practicing?.practices);
  const cards = sentenceWords(practicing!.text, builtLexicon).map(({ cardIds }) => cardIds);
  expect(cards.some((ids) => holdsCard(ids, practicing!.practices!))).toBe(true);
  expect(dictationFor({ ...spec, practice: [] satisfies readonly CardId[] }, sources)).toEqual(
    dictationFor(specAtStep(SEQUENCE, 60, 3), sources),
  );
});
