import type { Accent } from '../core/language/accent/accent.ts';
import { wordLabel } from '../core/language/accent/sound-style.ts';
import type { CardId } from '../core/language/card-id.ts';
import { correspondenceById } from '../core/language/correspondences.ts';
import { guessReading } from '../core/language/guess.ts';
import { makeSounds } from '../core/language/phonemes.ts';
import type { Reading } from '../core/language/reading.ts';
import { SEQUENCE } from '../core/sequence/built-in.ts';
import { stepOf } from '../core/sequence/step-of.ts';
import type { Lexicon } from '../core/words/lexicon.ts';
import { isSchwaCard } from '../core/words/needs.ts';
import { loadHere } from './engine.ts';
import { fail } from './failure.ts';
import { readOptions } from './options.ts';

/** `spell WORD…`: how each word falls into cards and syllables. */
export function spell(args: readonly string[]): string {
  const typed = readOptions(args, { accent: 'text' });
  if (typed.words.length === 0) fail('Name a word: sweepline spell ship');
  const { accent, lexicon } = loadHere(typed);
  const entries = typed.words.map((word) => entryOf(word, lexicon, accent));
  if (typed.flag('json')) return JSON.stringify(entries);
  return entries
    .map(({ word, readings }) => [word, ...readings.map(readingLine)].join('\n'))
    .join('\n');
}

/** The readings of a listed word; for any other, a guess by its letters, marked as one. */
function entryOf(asked: string, lexicon: Lexicon, accent: Accent) {
  const word = asked.toLowerCase();
  const index = lexicon.indexOf(word);
  if (index >= 0) {
    const readings = lexicon.readings(index);
    return {
      word,
      readings: readings.map((reading, place) => readingJson(reading, place === 0, accent)),
    };
  }
  const guess = /^[a-z]+$/.test(word) ? guessReading(word) : null;
  if (!guess) fail(`“${asked}” is not in the word list, and its letters give no guess.`);
  return { word, readings: [{ ...readingJson(guess, true, accent), guess: true }] };
}

type ReadingJson = ReturnType<typeof readingJson>;

function readingJson(reading: Reading, primary: boolean, accent: Accent) {
  return {
    primary,
    sounds: makeSounds(reading.sounds),
    ...(accent.length > 0 ? { said: wordLabel(reading, accent, 'ipa') } : {}),
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
function stepOfCard(id: CardId): number | null {
  const card = correspondenceById.get(id);
  if (card && isSchwaCard(card)) return stepOf(SEQUENCE, { kind: 'habit', habit: 'schwa' });
  return stepOf(SEQUENCE, { kind: 'card', id });
}

function readingLine({ sounds, said, cards, guess }: ReadingJson & { guess?: boolean }): string {
  const shown = cards.map(({ grapheme, regular }) => (regular ? grapheme : `(${grapheme})`));
  return `  ${shown.join('-')}  ${said ?? sounds}${guess ? '  (a guess: not in the word list)' : ''}`;
}
