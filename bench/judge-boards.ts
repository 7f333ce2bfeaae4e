/**
 * Prints, for docs/boards-by-step.md, what boards are at each step of our order: real words among thirty flips
 * of the day's run, flips that show what is new, how often e and i are turned one into the other and how often
 * they could be; then what the best board for the day costs in processor time, and whether it is proven; then the
 * different real words in runs over boards of syllables.
 *
 * `npx tsx bench/judge-boards.ts`, or with `runs`, `best` or `long` for one of the tables.
 */
import { readFileSync } from 'node:fs';
import { aimWishes } from '../core/boards/search/aims.ts';
import { findBoard } from '../core/boards/search/find-board.ts';
import { SHAPES, shapeById } from '../core/boards/shapes/shape-list.ts';
import type { Shape } from '../core/boards/shapes/shapes.ts';
import { cardsTaught } from '../core/boards/shapes/taught-cards.ts';
import { drawBoard } from '../core/drills/draw-board.ts';
import type { CardId } from '../core/language/card-id.ts';
import { SEQUENCE } from '../core/sequence/built-in.ts';
import { taughtUpTo } from '../core/sequence/teach.ts';
import { decodeLexicon } from '../core/words/lexicon-format.ts';
import { SCREEN_DATA } from '../core/words/screen-data.ts';
import { createWordScreen } from '../core/words/word-screen.ts';

const engine = {
  lexicon: decodeLexicon(readFileSync(new URL('../lexicon/dist/words.bin', import.meta.url))),
  screen: createWordScreen(SCREEN_DATA),
};
const CONTRAST: readonly [CardId, CardId] = ['e=EH', 'i=IH'];
const STEPS = SEQUENCE.steps.map((_, at) => at + 1);
const LONG = SHAPES.filter(({ form }) => form === 'beats').map(({ id }) => id);
const asked = process.argv[2];

if (asked === undefined || asked === 'runs') printRuns();
if (asked === undefined || asked === 'best') printBest();
if (asked === undefined || asked === 'long') printLong();

/** The day's run at each step. */
function printRuns(): void {
  print('step', 'new', 'board', 'flips', 'real', 'show what is new', 'e and i turned', 'at most');
  for (const step of STEPS) {
    const taught = taughtUpTo(SEQUENCE, step);
    const newest = newestAt(step);
    const drawn = drawBoard({ taught, seed: step, newest }, engine);
    if (!drawn) {
      print(step, names(newest), '–', 0);
      continue;
    }
    const { board, run } = drawn;
    const real = run.flips.filter(({ kind }) => kind === 'real').length;
    const showing = run.flips.filter(({ cards }) => cards.some((id) => newest.includes(id))).length;
    const pairs = CONTRAST.every((id) => taught.correspondences.has(id));
    const turned = pairs
      ? drawBoard({ taught, seed: step, newest, contrasts: [CONTRAST] }, engine)?.run.turned
      : undefined;
    print(
      step,
      names(newest),
      board.shape,
      run.flips.length,
      real,
      newest.length === 0 ? '–' : showing,
      turned?.flips ?? '–',
      turned?.atMost ?? '–',
    );
  }
}

/** The best board of three piles for the day at each step, all vowels allowed. */
function printBest(): void {
  print('step', 'real words', 'worth', 'no more than', 'proven', 'processor ms');
  const shape = shapeById.get('syllable') as Shape;
  for (const step of STEPS) {
    const context = { taught: taughtUpTo(SEQUENCE, step), ...engine };
    const wishes = {
      ...aimWishes('today', { newest: newestAt(step) }),
      limits: [8, Number.MAX_SAFE_INTEGER, 8],
    };
    const before = process.cpuUsage();
    const found = findBoard(shape, cardsTaught(context.taught), wishes, context);
    const { user, system } = process.cpuUsage(before);
    if (found.kind !== 'found') {
      print(step, found.message);
      continue;
    }
    const { counts, value, bound, optimal } = found;
    const proven = optimal ? 'yes' : 'no';
    print(
      step,
      counts.familiar + counts.rare,
      value,
      bound,
      proven,
      Math.round((user + system) / 1000),
    );
  }
}

/** Different real words in a run of thirty over each kind of board of syllables. */
function printLong(): void {
  print('step', ...LONG);
  for (const step of STEPS) {
    const taught = taughtUpTo(SEQUENCE, step);
    if (!taught.habits.has('long-words')) continue;
    print(
      step,
      ...LONG.map((shape) => {
        const spec = { taught, seed: step, newest: newestAt(step), shape };
        const flips = drawBoard(spec, engine)?.run.flips ?? [];
        const real = flips.filter(({ kind }) => kind === 'real').map(({ word }) => word);
        return flips.length === 0 ? '–' : `${new Set(real).size} of ${flips.length}`;
      }),
    );
  }
}

function newestAt(step: number): readonly CardId[] {
  return (SEQUENCE.steps[step - 1]?.items ?? []).flatMap((item) =>
    item.kind === 'card' ? [item.id] : [],
  );
}

function names(ids: readonly CardId[]): string {
  return ids.length === 0 ? '–' : ids.join(' ');
}

function print(...cells: readonly (string | number)[]): void {
  process.stdout.write(`| ${cells.join(' | ')} |\n`);
}
