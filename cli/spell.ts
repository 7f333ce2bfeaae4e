import { correspondenceById } from '../core/language/correspondences.ts';
import { makeSounds } from '../core/language/phonemes.ts';
import type { Reading } from '../core/language/reading.ts';
import { SEQUENCE } from '../core/sequence/built-in.ts';
import { stepOf } from '../core/sequence/step-of.ts';
import { isSchwaCard } from '../core/words/needs.ts';
import { loadLexicon } from './engine.ts';
import { fail } from './failure.ts';
import { readOptions } from './options.ts';

/** `spell WORD…`: how each word falls into cards and syllables. */
export function spell(args: readonly string[]): string {
  const typed = readOptions(args, {});
  if (typed.words.length === 0) fail('Name a word: sweepline spell ship');
  const lexicon = loadLexicon();
  const entries = typed.words.map((word) => {
    const index = lexicon.indexOf(word.toLowerCase());
    if (index < 0) fail(`“${word}” is not in the word list.`);
    return {
      word: lexicon.word(index),
      readings: lexicon.readings(index).map((reading, place) => readingJson(reading, place === 0)),
    };
  });
  if (typed.flag('json')) return JSON.stringify(entries);
  return entries
    .map(({ word, readings }) => [word, ...readings.map(readingLine)].join('\n'))
    .join('\n');
}

type ReadingJson = ReturnType<typeof readingJson>;

function readingJson(reading: Reading, primary: boolean) {
  return {
    primary,
    sounds: makeSounds(reading.sounds),
    cards: reading.cards.map(({ grapheme, letters, phonemes, id, regular }) => ({
      grapheme,
      letters,
      phonemes: phonemes.map((phoneme) => makeSounds([phoneme])),
      id,
      regular,
      step: regular ? stepOfCard(id) : null,
    })),
    syllables: reading.syllables,
  };
}

/** The step that teaches a card; a faded vowel is taught with the habit schwa. */
function stepOfCard(id: string): number | null {
  const card = correspondenceById.get(id);
  if (card && isSchwaCard(card)) return stepOf(SEQUENCE, { kind: 'habit', habit: 'schwa' });
  return stepOf(SEQUENCE, { kind: 'card', id });
}

function readingLine({ sounds, cards }: ReadingJson): string {
  const shown = cards.map(({ grapheme, regular }) => (regular ? grapheme : `(${grapheme})`));
  return `  ${shown.join('-')}  ${sounds}`;
}
