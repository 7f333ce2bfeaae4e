import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { builtLexicon } from '../../../test/built-lexicon.ts';
import { makePlainScreen } from '../../../test/plain-screen.ts';
import type { CardId } from '../../language/card-id.ts';
import { CORRESPONDENCES } from '../../language/correspondences.ts';
import { HABITS } from '../../language/taught.ts';
import type { WordScreen } from '../../words/screen.ts';
import { narrow } from '../search/best-board.ts';
import { SHAPES } from '../shapes/shape-list.ts';
import { candidates, type Shape } from '../shapes/shapes.ts';
import { judgeWord } from './judge.ts';
import type { JudgeContext } from './judge-context.ts';
import { cardsAt, makeWordTable, mayShow, outcomeAt, type WordTable } from './word-table.ts';

const all = CORRESPONDENCES.map(({ id }) => id);
const plain = makePlainScreen(['bat', 'mip', 'shate', 'go', 'pay'], ['lin', 'sar']);
/** Stops words by their letters, and by their sounds: whatever ends like *pick*. */
const screen: WordScreen = {
  judge: (word, sounds) =>
    sounds.join(' ').endsWith('IH K')
      ? { verdict: 'stop', category: 'test', reason: 'Not for class.' }
      : plain.judge(word, sounds),
};

/** A shape with some cards in each pile, and a taught set that lacks a few of them. */
const boards = fc
  .constantFrom(...SHAPES.filter(({ form }) => form !== 'beats'))
  .chain((shape: Shape) =>
    fc
      .tuple(
        ...candidates(shape, CORRESPONDENCES).map((pile) =>
          fc.subarray(
            pile.map(({ id }) => id),
            { minLength: 1, maxLength: Math.min(pile.length, shape.piles.length > 3 ? 3 : 5) },
          ),
        ),
      )
      .chain((piles) =>
        fc.subarray(piles.flat(), { maxLength: 1 }).map((untaught) => ({
          shape,
          piles,
          context: {
            taught: {
              correspondences: new Set(all.filter((id) => !untaught.includes(id))),
              habits: new Set(HABITS),
              irregularWords: new Set(),
            },
            lexicon: builtLexicon,
            screen,
          } as JudgeContext,
        })),
      ),
  );

function outcomeOf(ids: readonly CardId[], context: JudgeContext, shape: Shape): string {
  const built = judgeWord(ids, context, shape);
  if (built.kind === 'stopped') return built.reason.code;
  if (built.kind === 'nonsense') return 'nonsense';
  return context.lexicon.band(context.lexicon.indexOf(built.word)) <= 5 ? 'familiar' : 'rare';
}

function rowsOf(table: WordTable): string[] {
  return table.words.map(
    (word, at) => `${cardsAt(table, at).join(' ')} ${word} ${outcomeAt(table, at)}`,
  );
}

describe('a word table', () => {
  test('judges every combination as judgeWord does', () => {
    fc.assert(
      fc.property(boards, ({ shape, piles, context }) => {
        const table = makeWordTable(shape, piles, context);
        expect(table.words.length).toBe(piles.reduce((size, pile) => size * pile.length, 1));
        table.words.forEach((word, at) => {
          const ids = cardsAt(table, at);
          const built = judgeWord(ids, context, shape);
          expect(`${ids} ${word} ${outcomeAt(table, at)}`).toBe(
            `${ids} ${built.word} ${outcomeOf(ids, context, shape)}`,
          );
          expect(mayShow(table, at)).toBe(built.kind !== 'stopped');
        });
      }),
      { numRuns: 150 },
    );
  });

  test('narrowed to fewer cards is the table of those cards', () => {
    fc.assert(
      fc.property(boards, fc.infiniteStream(fc.boolean()), ({ shape, piles, context }, coins) => {
        const kept = piles.map((pile) => pile.filter((_, at) => at === 0 || coins.next().value));
        const whole = makeWordTable(shape, piles, context);
        expect(rowsOf(narrow(whole, kept))).toEqual(rowsOf(makeWordTable(shape, kept, context)));
      }),
      { numRuns: 40 },
    );
  });
});

test('a rule about the word as a whole stops a row that neither beginning nor ending breaks', () => {
  const closed = SHAPES.find(({ id }) => id === 'closed') as Shape;
  const context = {
    taught: { correspondences: new Set(all), habits: new Set(HABITS), irregularWords: new Set() },
    lexicon: builtLexicon,
    screen,
  } as JudgeContext;
  const table = makeWordTable(closed, [['w=W', 'v=V'], ['a=AE'], ['b=B', 'g=G']], context);
  const told = Object.fromEntries(table.words.map((word, at) => [word, outcomeAt(table, at)]));
  // After w, a says /ŏ/, but not before g.
  expect(told).toMatchObject({ wab: 'rule', wag: 'familiar', vab: 'nonsense' });
});
