import { readFileSync } from 'node:fs';
import type { Taught } from '../core/language/taught.ts';
import { SEQUENCE } from '../core/sequence/built-in.ts';
import { parseTaught, parseTaughtJson } from '../core/sequence/taught-text.ts';
import type { Lexicon } from '../core/words/lexicon.ts';
import { decodeLexicon } from '../core/words/lexicon-format.ts';
import { fail } from './failure.ts';

/** The word list that the build step made. */
export function loadLexicon(): Lexicon {
  return decodeLexicon(readFileSync(new URL('../lexicon/dist/words.bin', import.meta.url)));
}

/**
 * What was taught, from `step:24`, a list such as `a,m,s,t,sh,ea=EH`, or
 * `@file.json`. Ends the command when an item is unknown.
 */
export function readTaught(text: string | null): Taught {
  if (text === null) {
    return fail('Say what was taught: --taught step:24, --taught a,m,s,t or --taught @file.json');
  }
  const parsed = text.startsWith('@')
    ? parseTaughtJson(readTextFile(text.slice(1)), SEQUENCE)
    : parseTaught(text, SEQUENCE);
  return 'taught' in parsed ? parsed.taught : fail(parsed.error.message);
}

/** The text of a file that the person named. */
export function readTextFile(path: string): string {
  try {
    return readFileSync(path, 'utf8');
  } catch (error) {
    return fail(`Cannot read “${path}”: ${(error as NodeJS.ErrnoException).code ?? 'unknown'}.`);
  }
}
