import type { Lexicon } from '../words/lexicon.ts';

/** The word that a form with an apostrophe is built on, by its index in the list. */
export interface Built {
  readonly base: number;
  /** Whether the form is not said as its parts are (don't, won't). */
  readonly irregular: boolean;
}

/** Forms whose vowel is not that of their base. */
const CHANGED: ReadonlyMap<string, string> = new Map([
  ["don't", 'do'],
  ["shan't", 'shall'],
  ["won't", 'will'],
]);

/**
 * can't = can + n't, it's = it + 's, the girls' = girls, we've = we + 've. Null
 * when the word has no apostrophe or its base is not in the list.
 */
export function partsOfContraction(word: string, lexicon: Lexicon): Built | null {
  const changed = CHANGED.get(word);
  if (changed !== undefined) return found(changed, true, lexicon);
  const match = /^(.+?)(?:n't|'(?:s|m|d|ll|re|ve)?)$/.exec(word);
  if (!match) return null;
  const base = match[1] as string;
  return found(word === "can't" ? 'can' : base, false, lexicon);
}

function found(base: string, irregular: boolean, lexicon: Lexicon): Built | null {
  const index = lexicon.indexOf(base);
  return index < 0 ? null : { base: index, irregular };
}
