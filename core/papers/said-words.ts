import { assembleReading } from '../language/assemble.ts';
import type { Reading } from '../language/reading.ts';
import type { PapersWord } from '../log/event.ts';
import { saidWord } from '../spelling/said-word.ts';
import type { Lexicon } from '../words/lexicon.ts';

/** Why a word cannot be on a list of spelling words. */
export interface WordsProblem {
  readonly word: string;
  readonly message: string;
}

/**
 * The words of a list as she typed it, one a line or parted by commas or spaces, each once, with the
 * cards they fall into; and those that cannot be read.
 */
export function parseWords(
  text: string,
  lexicon: Lexicon,
): { readonly words: readonly PapersWord[]; readonly problems: readonly WordsProblem[] } {
  const typed = new Set(
    text
      .toLowerCase()
      .split(/[\s,;]+/)
      .filter(Boolean),
  );
  const words: PapersWord[] = [];
  const problems: WordsProblem[] = [];
  for (const word of typed) {
    const said = paperWord(word, lexicon);
    if (said) words.push(said);
    else {
      const message = `“${word}” could not be cut into cards. Write it with letters only.`;
      problems.push({ word, message });
    }
  }
  return { words, problems };
}

/** One word with its cards and syllables, in its ordinary pronunciation; null when it has none. */
function paperWord(word: string, lexicon: Lexicon): PapersWord | null {
  const reading = saidWord(word, lexicon)?.[0];
  if (!reading) return null;
  const breaks = reading.syllables.slice(1).map(({ from }) => from);
  return { word: reading.word, cards: reading.cards.map(({ id }) => id), breaks };
}

/** The reading of a word of a pile, as it was when the pile was begun. */
export function readingOfWord(said: PapersWord): Reading {
  const known = made.get(said);
  if (known) return known;
  const reading = assembleReading(said.word, said.cards, said.breaks);
  made.set(said, reading);
  return reading;
}

const made = new WeakMap<PapersWord, Reading>();
