import loadHighs from 'highs';
import { describe, expect, test } from 'vitest';
import { makeLinearProgram } from '../../../bench/linear-program.ts';
import { builtLexicon } from '../../../test/built-lexicon.ts';
import type { CardId } from '../../language/card-id.ts';
import { cardsOnCard } from '../../language/syllable-card.ts';
import { SEQUENCE } from '../../sequence/built-in.ts';
import { taughtUpTo } from '../../sequence/teach.ts';
import { SCREEN_DATA } from '../../words/screen-data.ts';
import { createWordScreen } from '../../words/word-screen.ts';
import { judgeWord } from '../judge/judge.ts';
import { cardsAt, makeWordTable, outcomeAt } from '../judge/word-table.ts';
import { makeRun } from '../runs/run.ts';
import { shapeById } from '../shapes/shape-list.ts';
import type { Shape } from '../shapes/shapes.ts';
import { cardsTaught } from '../shapes/taught-cards.ts';
import { aimWishes } from './aims.ts';
import { searchTable, withWanted } from './best-board.ts';
import { findBoard } from './find-board.ts';
import { makeModel } from './make-model.ts';
import { syllablePiles, wishesInSyllables } from './syllable-piles.ts';

const screen = createWordScreen(SCREEN_DATA);
/** The first step at which words of two beats are read. */
const FIRST = SEQUENCE.steps.findIndex(({ items }) =>
  items.some((item) => item.kind === 'habit' && item.habit === 'long-words'),
);
const contextAt = (step: number) => ({
  taught: taughtUpTo(SEQUENCE, step),
  lexicon: builtLexicon,
  screen,
});
const shapeOf = (id: string) => shapeById.get(id) as Shape;
const newestAt = (step: number): readonly CardId[] =>
  (SEQUENCE.steps[step - 1]?.items ?? []).flatMap((item) =>
    item.kind === 'card' ? [item.id] : [],
  );

describe('a board of syllable cards', () => {
  test('is proven best among its syllables, as an independent solver finds it', async () => {
    const highs = await loadHighs();
    for (const [step, id] of [
      [FIRST + 1, 'beats'],
      [70, 'beats-open'],
      [80, 'prefixed'],
      [106, 'beats'],
    ] as const) {
      const context = contextAt(step);
      const asked = { ...aimWishes('today', { newest: newestAt(step) }), limits: [5, 5] };
      const piles = syllablePiles(shapeOf(id), asked, context, 160);
      const table = makeWordTable(shapeOf(id), piles, context);
      const wishes = wishesInSyllables(piles, asked);
      const found = searchTable(table, wishes);
      const model = makeModel(table, withWanted(table, wishes));
      const solved = highs.solve(makeLinearProgram(model), { output_flag: false });
      expect(found.kind === 'found' && [step, found.value, found.optimal]).toEqual([
        ...[step, Math.round(solved.ObjectiveValue), true],
      ]);
    }
  });

  test('has twenty different real words in thirty flips, from the first step of two beats on', () => {
    for (const step of [FIRST + 1, 66, 80, 100, 120, SEQUENCE.steps.length]) {
      const context = contextAt(step);
      const shape = shapeOf('beats');
      const found = findBoard(
        shape,
        cardsTaught(context.taught),
        { limits: [12, 12], nodeLimit: 60 },
        context,
      );
      if (found.kind !== 'found') throw new Error(found.message);
      expect([step, found.counts.screened]).toEqual([step, 0]);
      const { flips } = makeRun(
        found.table,
        { flips: 30, realShare: 2 / 3, seed: step },
        builtLexicon,
      );
      const real = new Set(flips.flatMap(({ word, kind }) => (kind === 'real' ? [word] : [])));
      expect(flips).toHaveLength(30);
      expect([step, real.size >= 20]).toEqual([step, true]);
      for (const { cards, joints, word } of flips) {
        expect(joints).toHaveLength(1);
        expect(cards.length).toBeGreaterThan(joints?.[0] ?? 99);
        expect(word.length).toBeGreaterThan(2);
      }
    }
  });

  test('shows what is new by the syllables that carry it', () => {
    const step = SEQUENCE.steps.findIndex(({ items }) =>
      items.some((item) => item.kind === 'card' && item.id === 'ti=SH'),
    );
    const context = contextAt(step + 1);
    const newest: readonly CardId[] = ['ti=SH'];
    const asked = { ...aimWishes('today', { newest }), limits: [10, 8], nodeLimit: 60 };
    const found = findBoard(shapeOf('beats'), cardsTaught(context.taught), asked, context);
    if (found.kind !== 'found') throw new Error(found.message);
    const lying = found.board.piles.flat().flatMap(cardsOnCard);
    expect(lying).toContain('ti=SH');
    const words = found.table.words.filter((_, at) =>
      cardsAt(found.table, at).flatMap(cardsOnCard).includes('ti=SH'),
    );
    expect(words).toContain('nation');
  });
});

describe('a row of syllable cards', () => {
  const syllable = (text: string) => text as CardId;
  const nap = syllable('nap=n=N.a=AE.p=P');
  const kin = syllable('kin=k=K.i=IH.n=N');
  const rab = syllable('rab=r=R.a=AE.b=B');
  const bit = syllable('bit=b=B.i=IH.t=T');
  const ing = syllable('ing=i=IH.ng=NG');
  const ro = syllable('ro=r=R.o=OW');
  const bin = syllable('bin=b=B.i=IH.n=N');
  const context = contextAt(SEQUENCE.steps.length);
  const judged = (ids: readonly CardId[]) => judgeWord(ids, context, shapeOf('beats'));

  test('is real where the word is divided so, and a doubled consonant is said once', () => {
    expect(judged([nap, kin])).toMatchObject({ kind: 'real', word: 'napkin' });
    const rabbit = judged([rab, bit]);
    expect(rabbit).toMatchObject({ kind: 'real', word: 'rabbit' });
    expect(rabbit.sounds).toEqual(['R', 'AE', 'B', 'IH', 'T']);
  });

  test('is stopped where the word is divided otherwise: rob·in is no ro·bin', () => {
    expect(judged([ro, bin])).toMatchObject({
      kind: 'stopped',
      reason: { code: 'said-differently' },
    });
  });

  test('is nonsense where the joint divides in one way only', () => {
    expect(judged([nap, bit]).kind).toBe('nonsense');
    expect(judged([nap, ing])).toMatchObject({ kind: 'stopped' });
  });

  test('is stopped where a card on a syllable was not taught', () => {
    const early = contextAt(3);
    expect(judgeWord([nap, kin], early, shapeOf('beats'))).toMatchObject({
      kind: 'stopped',
      reason: { code: 'untaught' },
    });
  });

  test('counts in a table as it is judged', () => {
    const piles = [
      [nap, rab, ro],
      [kin, bit, bin],
    ];
    const table = makeWordTable(shapeOf('beats'), piles, context);
    table.words.forEach((word, at) => {
      const built = judged(cardsAt(table, at));
      expect(built.word).toBe(word);
      const isReal = /^(familiar|rare)$/.test(outcomeAt(table, at));
      expect(isReal).toBe(built.kind === 'real');
    });
  });
});
