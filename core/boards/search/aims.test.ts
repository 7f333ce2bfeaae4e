import loadHighs from 'highs';
import { describe, expect, test } from 'vitest';
import { makeLinearProgram } from '../../../bench/linear-program.ts';
import { builtLexicon } from '../../../test/built-lexicon.ts';
import { makePlainScreen } from '../../../test/plain-screen.ts';
import type { CardId } from '../../language/card-id.ts';
import { correspondenceById } from '../../language/correspondences.ts';
import { makeRandom, shuffled } from '../../random.ts';
import { SEQUENCE } from '../../sequence/built-in.ts';
import { taughtUpTo } from '../../sequence/teach.ts';
import { cardsAt, makeWordTable, outcomeAt, type WordTable } from '../judge/word-table.ts';
import { shapeById } from '../shapes/shape-list.ts';
import { candidates, type Shape } from '../shapes/shapes.ts';
import { AIMS, aimWishes } from './aims.ts';
import { searchTable, withWanted } from './best-board.ts';
import { makeModel } from './make-model.ts';

const shape = shapeById.get('syllable') as Shape;
const screen = makePlainScreen(['bat', 'pin', 'mop', 'set', 'rain'], ['lid']);

/** Some cards of a step of our order, judged, the newest always among them. */
function drawTable(seed: number): {
  readonly table: WordTable;
  readonly newest: readonly CardId[];
} {
  const random = makeRandom(seed);
  const step = 12 + random.below(80);
  const taught = taughtUpTo(SEQUENCE, step);
  const newest = (SEQUENCE.steps[step - 1]?.items ?? []).flatMap((item) =>
    item.kind === 'card' ? [item.id] : [],
  );
  const others = shuffled([...taught.correspondences], random).filter((id) => !newest.includes(id));
  const cards = [...newest, ...others].flatMap((id) => correspondenceById.get(id) ?? []);
  const piles = candidates(shape, cards).map((pile, at) =>
    pile.slice(0, [7, 5, 7][at]).map(({ id }) => id),
  );
  return { table: makeWordTable(shape, piles, { taught, lexicon: builtLexicon, screen }), newest };
}

/** What a word is worth as the comment on the aims says it, worked out word by word. */
function worthOf(table: WordTable, index: number, factors: ReadonlyMap<string, number>): number {
  const plain = { familiar: 4, rare: 1, nonsense: 1 }[outcomeAt(table, index) as 'rare'] ?? 0;
  return plain * Math.max(1, ...cardsAt(table, index).map((id) => factors.get(id) ?? 1));
}

describe('what a board is best for', () => {
  test('today: what is new counts fourfold, what broke and her focus threefold, and all are wanted', () => {
    const day = { newest: ['sh=SH'], broken: ['e=EH', 'sh=SH'], focus: ['b=B'] } as const;
    expect(aimWishes('today', day)).toEqual({
      wanted: ['sh=SH', 'b=B', 'e=EH'],
      worth: [
        ['sh=SH', 4],
        ['b=B', 3],
        ['e=EH', 3],
      ],
    });
    expect(aimWishes('review', day)).toEqual({
      wanted: ['e=EH', 'b=B'],
      worth: [
        ['e=EH', 4],
        ['b=B', 3],
      ],
    });
    expect(aimWishes('most-words', day)).toEqual({ wanted: [], worth: [] });
  });

  test('each is proven best for its own goal, as an independent solver finds it', async () => {
    const highs = await loadHighs();
    let withNewest = 0;
    for (let seed = 0; seed < 6; seed++) {
      const { table, newest } = drawTable(seed);
      const broken = table.piles.map((pile) => pile.at(-1) as CardId);
      for (const aim of AIMS) {
        const asked = {
          ...aimWishes(aim, { newest, broken }),
          limits: [4, 3, 4],
          clean: seed % 2 > 0,
        };
        const found = searchTable(table, asked);
        if (found.kind !== 'found') throw new Error(found.message);
        const model = makeModel(table, withWanted(table, asked));
        const solved = highs.solve(makeLinearProgram(model), { output_flag: false });
        expect([seed, aim, found.value, found.bound, found.optimal]).toEqual([
          ...[seed, aim, Math.round(solved.ObjectiveValue), found.value, true],
        ]);
        const factors = new Map<string, number>(asked.worth);
        const own = found.table;
        const value = own.words.reduce((sum, _, at) => sum + worthOf(own, at, factors), 0);
        expect(found.value).toBe(value);
        if (aim !== 'today') continue;
        const lying = found.board.piles.flat();
        if (newest.some((id) => lying.includes(id))) withNewest++;
      }
    }
    expect(withNewest).toBeGreaterThan(3);
  });

  test('what is new lies on the board wherever it makes a word, and most words does not ask for it', () => {
    for (let step = 14; step <= 64; step += 10) {
      const taught = taughtUpTo(SEQUENCE, step);
      const newest = (SEQUENCE.steps[step - 1]?.items ?? []).flatMap((item) =>
        item.kind === 'card' ? [item.id] : [],
      );
      const cards = [...taught.correspondences].flatMap((id) => correspondenceById.get(id) ?? []);
      const piles = candidates(shape, cards).map((pile) => pile.slice(-9).map(({ id }) => id));
      const table = makeWordTable(shape, piles, { taught, lexicon: builtLexicon, screen });
      const asked = { ...aimWishes('today', { newest }), limits: [4, 3, 4], nodeLimit: 40 };
      const found = searchTable(table, asked);
      if (found.kind !== 'found') throw new Error(found.message);
      for (const id of newest) {
        const works = table.words.some(
          (_, at) => worthOf(table, at, new Map()) > 0 && cardsAt(table, at).includes(id),
        );
        if (works) expect([step, ...found.board.piles.flat()]).toContain(id);
      }
    }
  });

  test('cards that are wanted never leave a pile without half of its room', () => {
    const { table } = drawTable(3);
    const wanted = table.piles.flat();
    const { pinned = [] } = withWanted(table, { limits: [4, 3, 4], wanted });
    table.piles.forEach((pile, at) => {
      const most = Math.ceil(([4, 3, 4][at] as number) / 2);
      expect(pinned.filter((id) => pile.includes(id)).length).toBeLessThanOrEqual(most);
    });
  });
});
