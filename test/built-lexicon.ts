import { readFileSync } from 'node:fs';
import type { Lexicon } from '../core/words/lexicon.ts';
import { decodeLexicon } from '../core/words/lexicon-format.ts';

/** The real word list, as `npm test` has built it. */
export const builtLexicon: Lexicon = decodeLexicon(
  readFileSync(new URL('../lexicon/dist/words.bin', import.meta.url)),
);
