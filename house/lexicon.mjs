import { ensureMade } from './made.mjs';
import { run } from './run.mjs';
import { say } from './say.mjs';

/**
 * Makes sure that the word list is built from the sources as they stand: `lexicon/dist/words.bin` and
 * `lexicon/dist/meanings.json`. Prints only on standard error.
 */
export function ensureLexicon() {
  return ensureMade({
    from: ['lexicon', 'core/language', 'core/words', 'package-lock.json'],
    files: ['lexicon/dist/words.bin', 'lexicon/dist/meanings.json'],
    stamp: 'lexicon/dist/made-from.txt',
    make: async () => {
      say('Building the word list (half a minute, only when it changed) …');
      const code = await run(process.execPath, ['--import', 'tsx', 'lexicon/build.ts']);
      if (code !== 0) {
        throw new Error(`The word list could not be built (exit ${code}); see the messages above.`);
      }
    },
  });
}
