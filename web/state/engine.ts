/** What the screens ask of the engine, and the word list behind it, fetched once. It holds only what was read. */

import type { Accent } from '../../core/language/accent/accent.ts';
import { guessReading } from '../../core/language/guess.ts';
import type { Phoneme } from '../../core/language/phonemes.ts';
import type { Taught } from '../../core/language/taught.ts';
import { decodableWords } from '../../core/words/decodable.ts';
import type { Lexicon } from '../../core/words/lexicon.ts';
import { decodeLexicon } from '../../core/words/lexicon-format.ts';
import { lexiconHere } from '../../core/words/lexicon-here.ts';
import { decodeMeanings, type Meanings } from '../../core/words/meanings.ts';
import { soundedNames } from '../../core/words/name-sounds.ts';
import type { WordScreen } from '../../core/words/screen.ts';
import { SCREEN_DATA } from '../../core/words/screen-data.ts';
import { screenHere } from '../../core/words/screen-here.ts';
import { screenForClass, type TeacherRules } from '../../core/words/teacher-rules.ts';
import { createWordScreen } from '../../core/words/word-screen.ts';
import meaningsUrl from '../../lexicon/dist/meanings.json?url';
import wordsUrl from '../../lexicon/dist/words.bin?url';

/**
 * What the screens ask of the engine once the word list is here: it is all that makes drills, boards and
 * searches in `core/`, which come with the screens that show them.
 */
export interface Engine {
  readonly lexicon: Lexicon;
  readonly screen: WordScreen;
  /** How many words of the list can be read. */
  countReadable(taught: Taught): number;
  /** The ways a spelling can be said: as the word list has it, else as its letters suggest. */
  waysToSay(word: string): readonly (readonly Phoneme[])[];
  /** The same engine for a class: as it speaks, with its teacher's decisions and its children's first names. */
  forClass(accent: Accent, rules: TeacherRules, names: readonly string[]): Engine;
}

/** Fetches the word list and makes the engine. Rejects when the list cannot be had. */
export async function loadEngine(): Promise<Engine> {
  const lexicon = decodeLexicon(new Uint8Array(await (await fetchFile(wordsUrl)).arrayBuffer()));
  return makeEngine(lexicon, createWordScreen(SCREEN_DATA));
}

function makeEngine(lexicon: Lexicon, screen: WordScreen): Engine {
  const parts = { lexicon, screen };
  return {
    ...parts,
    countReadable: (taught) => decodableWords(lexicon, taught).length,
    waysToSay(word) {
      const index = lexicon.indexOf(word);
      if (index >= 0) return lexicon.readings(index).map(({ sounds }) => sounds);
      const guess = guessReading(word);
      return guess ? [guess.sounds] : [];
    },
    forClass(accent, rules, names) {
      const here = lexiconHere(lexicon, accent);
      const heard = screenHere(screen, here, accent);
      return rules.decisions.length + names.length === 0
        ? makeEngine(here, heard)
        : makeEngine(here, screenForClass(heard, rules, soundedNames(names, here)));
    },
  };
}

/** Fetches the short meanings. Rejects when they cannot be had; all else goes on without them. */
export async function loadMeanings(): Promise<Meanings> {
  return decodeMeanings(await (await fetchFile(meaningsUrl)).json());
}

/** The sentences of the dictation, fetched when they are first asked for. Rejects when they cannot be had. */
export async function loadSentences(): Promise<readonly string[]> {
  return (await import('../../core/dictation/sentences.ts')).SENTENCES;
}

async function fetchFile(url: string): Promise<Response> {
  const response = await fetch(url);
  if (!response.ok) throw new Error(`${url}: ${response.status}`);
  return response;
}
