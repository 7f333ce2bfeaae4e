import { readFileSync } from 'node:fs';
import { makeWordTable, type WordTable } from '../core/boards/judge/word-table.ts';
import { walkByChance } from '../core/boards/runs/chance-walk.ts';
import { makeRunGraph } from '../core/boards/runs/graph.ts';
import { makeRun } from '../core/boards/runs/run.ts';
import type { RunWishes } from '../core/boards/runs/wishes.ts';
import { shapeById } from '../core/boards/shapes/shape-list.ts';
import { candidates, type Shape } from '../core/boards/shapes/shapes.ts';
import { buildDrill } from '../core/drills/build-drill.ts';
import { correspondenceById } from '../core/language/correspondences.ts';
import { makeRandom, shuffled } from '../core/random.ts';
import { SEQUENCE } from '../core/sequence/built-in.ts';
import { taughtUpTo } from '../core/sequence/teach.ts';
import { decodeLexicon } from '../core/words/lexicon-format.ts';
import { SCREEN_DATA } from '../core/words/screen-data.ts';
import { createWordScreen } from '../core/words/word-screen.ts';
import { type Measurement, measure } from './measure.ts';

const engine = {
  lexicon: decodeLexicon(readFileSync(new URL('../lexicon/dist/words.bin', import.meta.url))),
  screen: createWordScreen(SCREEN_DATA),
};
const INSTANCES = 60;

/**
 * Runs and drills on the real word list: what a teacher waits for when she asks for a drill. The
 * boards' cards are drawn at random from what is taught at random steps of our own order.
 */
export async function measurements(): Promise<readonly Measurement[]> {
  const tables = Array.from({ length: INSTANCES }, (_, seed) => drawTable(seed));
  const taught = taughtUpTo(SEQUENCE, 70);
  const { piles } = tables[0] as WordTable;
  let seed = 0;
  return [
    await measure({
      name: 'judge a board of 12 × 6 × 12',
      run: () => makeWordTable(syllable, piles, { taught: taughtUpTo(SEQUENCE, 999), ...engine }),
    }),
    ...(await besideChance(tables)),
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

/** Runs over all the boards in turn, beside cards of the same boards turned by chance alone. */
async function besideChance(boards: readonly WordTable[]): Promise<readonly Measurement[]> {
  const usual = { flips: 30, realShare: 0.5 };
  const each = (run: (board: WordTable, seed: number) => unknown) => {
    let seed = 0;
    return { runs: 120, run: () => run(boards[seed % boards.length] as WordTable, seed++) };
  };
  const chance = await measure({
    name: '30 cards turned by chance on 12 × 6 × 12',
    ...each((board, seed) => {
      const graph = makeRunGraph(board, { ...usual, seed }, engine.lexicon);
      return walkByChance(graph, usual.flips, makeRandom(seed));
    }),
  });
  const beside = async (name: string, wishes: Partial<RunWishes>): Promise<Measurement> => {
    const run = each((board, seed) =>
      makeRun(board, { ...usual, ...wishes, seed }, engine.lexicon),
    );
    const measured = await measure({ name, aim: 5, ...run });
    const ratio = (measured.median / chance.median).toFixed(1);
    return { ...measured, name: `${name} (${ratio} by chance)` };
  };
  return [
    chance,
    await beside('run of 30 flips on 12 × 6 × 12', {}),
    await beside('the same with look-alikes side by side, rising', {
      contrasts: [
        ['b=B', 'd=D'],
        ['e=EH', 'i=IH'],
      ],
      rise: true,
    }),
  ];
}
