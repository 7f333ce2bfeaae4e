import type { Lexicon } from './lexicon.ts';

/** Short meanings by word. */
export interface Meanings {
  /** A few words of meaning (at most 60 characters), or null when none is at hand. Safe for any string. */
  meaningOf(word: string): string | null;
}

/**
 * Reads `meanings.json`: an object from word to meaning. Anything that is not
 * text is passed over, so a damaged file costs meanings and nothing else.
 */
export function decodeMeanings(json: unknown): Meanings {
  const entries = typeof json === 'object' && json !== null ? Object.entries(json) : [];
  const byWord = new Map(
    entries.filter((entry): entry is [string, string] => typeof entry[1] === 'string'),
  );
  return { meaningOf: (word) => byWord.get(word) ?? null };
}

/** The commonest band whose words a teacher may not know. */
const RARE_BAND = 6;

/** Meanings of rare words alone: what *cot* means nobody needs to be told. Null for all others. */
export function rareMeanings(
  { meaningOf }: Meanings,
  lexicon: Lexicon,
): (word: string) => string | null {
  return (word) => {
    const index = lexicon.indexOf(word);
    return index >= 0 && lexicon.band(index) >= RARE_BAND ? meaningOf(word) : null;
  };
}
