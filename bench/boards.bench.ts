import { readFileSync } from 'node:fs';
import loadHighs from 'highs';
import { makeModel } from '../core/boards/best-board.ts';
import type { BoardModel } from '../core/boards/board-model.ts';
import { makeRun } from '../core/boards/run.ts';
import { solveBoard } from '../core/boards/search.ts';
import { shapeById } from '../core/boards/shape-list.ts';
import { candidates, type Shape } from '../core/boards/shapes.ts';
import { makeWordTable, type WordTable } from '../core/boards/word-table.ts';
import { buildDrill } from '../core/drills/build-drill.ts';
import { correspondenceById } from '../core/language/correspondences.ts';
import { makeRandom, shuffled } from '../core/random.ts';
import { SEQUENCE } from '../core/sequence/built-in.ts';
import { taughtUpTo } from '../core/sequence/teach.ts';
import { decodeLexicon } from '../core/words/lexicon-format.ts';
import { SCREEN_DATA } from '../core/words/screen-data.ts';
import { createWordScreen } from '../core/words/word-screen.ts';
import { makeLinearProgram } from './linear-program.ts';
import { type Measurement, measure, summary } from './measure.ts';

const engine = {
  lexicon: decodeLexicon(readFileSync(new URL('../lexicon/dist/words.bin', import.meta.url))),
  screen: createWordScreen(SCREEN_DATA),
};
const INSTANCES = 60;

/**
 * Boards and drills on the real word list: what a teacher waits for when she asks for a drill, and
 * the exact search beside a general solver on the same clean models, each solved once after a
 * warm-up. Cards are drawn at random from what is taught at random steps of our own order.
 */
export async function measurements(): Promise<readonly Measurement[]> {
  const tables = Array.from({ length: INSTANCES }, (_, seed) => drawTable(seed));
  const models = tables.map((table) => makeModel(table, { limits: [8, 6, 8], clean: true }));
  const wide = makeWordTable(syllable, widest(), { taught: taughtUpTo(SEQUENCE, 999), ...engine });
  const taught = taughtUpTo(SEQUENCE, 70);
  const board = tables[0] as WordTable;
  const { piles } = board;
  let seed = 0;
  return [
    await measure({
      name: 'judge a board of 12 × 6 × 12',
      run: () => makeWordTable(syllable, piles, { taught: taughtUpTo(SEQUENCE, 999), ...engine }),
    }),
    ...(await besideHighs(models)),
    await measure({
      name: `best clean board of ${wide.piles.map((pile) => pile.length).join(' × ')}, 12 × 12`,
      run: () => solveBoard(makeModel(wide, { limits: [12, 12, 12], clean: true })),
      warmUps: 1,
      runs: 5,
    }),
    await measure({
      name: 'run of 30 flips on 12 × 6 × 12',
      aim: 5,
      run: () => makeRun(board, { flips: 30, realShare: 0.5, seed: seed++ }),
    }),
    await measure({
      name: 'drill, three parts',
      aim: 50,
      run: () => buildDrill({ taught, seed: seed++, newest: ['ir=ER'] }, engine),
    }),
  ];
}

const syllable = shapeById.get('syllable') as Shape;

function drawTable(seed: number): WordTable {
  const random = makeRandom(seed);
  const taught = taughtUpTo(SEQUENCE, 30 + random.below(90));
  const cards = [...taught.correspondences].flatMap((id) => correspondenceById.get(id) ?? []);
  const piles = candidates(syllable, cards).map((pile, at) =>
    shuffled(pile, random)
      .slice(0, at === 1 ? 6 : 12)
      .map(({ id }) => id),
  );
  return makeWordTable(syllable, piles, { taught, ...engine });
}

/** Closed syllables with everything that is taught by the end. */
function widest(): readonly (readonly string[])[] {
  const cards = [...taughtUpTo(SEQUENCE, 999).correspondences].flatMap(
    (id) => correspondenceById.get(id) ?? [],
  );
  const closed = candidates(shapeById.get('closed') as Shape, cards);
  return closed.map((pile) => pile.map(({ id }) => id));
}

/** Both solvers on the same models; throws when they disagree. */
async function besideHighs(models: readonly BoardModel[]): Promise<readonly Measurement[]> {
  const highs = await loadHighs();
  const ours: number[] = [];
  const theirs: number[] = [];
  for (const model of models) solveBoard(model);
  for (const model of models) {
    const program = makeLinearProgram(model);
    const started = performance.now();
    const found = solveBoard(model);
    const between = performance.now();
    const solved = highs.solve(program, { output_flag: false });
    theirs.push(performance.now() - between);
    ours.push(between - started);
    if (found.kind !== 'found' || found.value !== Math.round(solved.ObjectiveValue)) {
      throw new Error('The board search and HiGHS disagree.');
    }
  }
  return [
    summary({ name: 'best clean board of 12 × 6 × 12, 8 × 8', unit: 'ms', aim: 16, values: ours }),
    summary({ name: 'the same by HiGHS', unit: 'ms', values: theirs }),
  ];
}
