import { readFileSync } from 'node:fs';
import { makeWordTable, type WordTable } from '../core/boards/judge/word-table.ts';
import { usefulCards } from '../core/boards/search/best-board.ts';
import type { BoardModel } from '../core/boards/search/board-model.ts';
import type { BoardWishes } from '../core/boards/search/board-wishes.ts';
import { makeModel } from '../core/boards/search/make-model.ts';
import { solveBoard } from '../core/boards/search/search.ts';
import { shapeById } from '../core/boards/shapes/shape-list.ts';
import { candidates, type Shape } from '../core/boards/shapes/shapes.ts';
import { cardsTaught } from '../core/boards/shapes/taught-cards.ts';
import { trimPiles } from '../core/boards/shapes/trim-piles.ts';
import { makeRandom, shuffled } from '../core/random.ts';
import { SEQUENCE } from '../core/sequence/built-in.ts';
import { taughtUpTo } from '../core/sequence/teach.ts';
import { decodeLexicon } from '../core/words/lexicon-format.ts';
import { SCREEN_DATA } from '../core/words/screen-data.ts';
import { createWordScreen } from '../core/words/word-screen.ts';
import { besideHighs } from './beside-highs.ts';
import { type Measurement, measure } from './measure.ts';

const engine = {
  lexicon: decodeLexicon(readFileSync(new URL('../lexicon/dist/words.bin', import.meta.url))),
  screen: createWordScreen(SCREEN_DATA),
};
const CLEAN = { clean: true };
const STRICT = { clean: true, strict: true };
const ALL_VOWELS = Number.MAX_SAFE_INTEGER;

/**
 * The exact search beside a general solver on the same models, whose cards are drawn at random from
 * what is taught at random steps of our own order; then on whole piles, where no general solver ends.
 */
export async function measurements(): Promise<readonly Measurement[]> {
  const ordinary = draw(60, 'syllable', [12, 6, 12]);
  const crowded = draw(8, 'syllable', [9, 14, 9]);
  const clustered = draw(8, 'ccvc', [8, 6, 5, 8]);
  return [
    ...(await besideHighs(
      { name: 'best clean board of 12 × 6 × 12, 8 × 8', aim: 16 },
      ordinary.map((table) => makeModel(table, { limits: [8, 6, 8], ...CLEAN })),
    )),
    ...(await besideHighs(
      { name: 'best strict board of 12 × 6 × 12, 8 × 8' },
      ordinary.slice(0, 20).map((table) => makeModel(table, { limits: [8, 6, 8], ...STRICT })),
    )),
    ...(await besideHighs(
      { name: 'best clean board of 9 × 14 × 9, 6 × 6' },
      crowded.map((table) => makeModel(table, { limits: [6, ALL_VOWELS, 6], ...CLEAN })),
    )),
    ...(await besideHighs(
      { name: 'best clean board of 8 × 6 × 5 × 8, 6 × 4 × 5 × 6' },
      clustered.map((table) => makeModel(table, { limits: [6, 4, 5, 6], ...CLEAN })),
    )),
    await whole('closed', 999, { limits: [12, 12, 12], ...CLEAN }),
    await whole('closed', 999, { limits: [8, ALL_VOWELS, 8], ...STRICT }),
    await whole('syllable', 70, { limits: [8, ALL_VOWELS, 8], ...CLEAN }),
    await whole('syllable', 50, { limits: [8, ALL_VOWELS, 8], ...STRICT }),
    await whole('ccvc', 999, { limits: [8, 8, ALL_VOWELS, 8], ...CLEAN }),
    await whole('base-ending', 50, { limits: [8, ALL_VOWELS, 8, 99], ...CLEAN }),
  ];
}

/** Tables of a shape, each of cards drawn from what a random step has taught, so many a pile. */
function draw(count: number, shape: string, most: readonly number[]): readonly WordTable[] {
  return Array.from({ length: count }, (_, seed) => {
    const random = makeRandom(seed);
    const taught = taughtUpTo(SEQUENCE, (shape === 'syllable' ? 30 : 50) + random.below(80));
    const piles = candidates(shapeById.get(shape) as Shape, cardsTaught(taught)).map((pile, at) =>
      shuffled(pile, random)
        .slice(0, most[at])
        .map(({ id }) => id),
    );
    return makeWordTable(shapeById.get(shape) as Shape, piles, { taught, ...engine });
  });
}

/** The best board of all that a step has taught. */
async function whole(shape: string, step: number, wishes: BoardWishes): Promise<Measurement> {
  const model = wholeModel(shapeById.get(shape) as Shape, step, wishes);
  const limits = wishes.limits.map((limit) => (limit > 99 ? 'all' : limit)).join(' × ');
  return measure({
    name: `best ${wishes.strict ? 'strict' : 'clean'} board of ${model.sizes.join(' × ')}, ${limits}`,
    run: () => solveBoard(model),
    warmUps: 1,
    runs: 3,
  });
}

function wholeModel(shape: Shape, step: number, wishes: BoardWishes): BoardModel {
  const taught = taughtUpTo(SEQUENCE, step);
  const piles = candidates(shape, cardsTaught(taught)).map((pile) => pile.map(({ id }) => id));
  const kept = trimPiles(shape, piles, [], engine.lexicon);
  const table = makeWordTable(shape, kept, { taught, ...engine });
  return makeModel(usefulCards(table, wishes), wishes);
}
