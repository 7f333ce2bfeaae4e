import fc from 'fast-check';
import { expect } from 'vitest';
import { judgeWord } from '../core/boards/judge/judge.ts';
import type { JudgeContext } from '../core/boards/judge/judge-context.ts';
import { makeWordTable, type WordTable } from '../core/boards/judge/word-table.ts';
import type { Flip } from '../core/boards/shapes/board.ts';
import { shapeById } from '../core/boards/shapes/shape-list.ts';
import type { Shape } from '../core/boards/shapes/shapes.ts';
import type { CardId } from '../core/language/card-id.ts';
import { CORRESPONDENCES } from '../core/language/correspondences.ts';
import { builtLexicon } from './built-lexicon.ts';
import { makePlainScreen } from './plain-screen.ts';

/** Boards to run over: one-syllable words, everything taught, four words stopped. */
export const context: JudgeContext = {
  taught: {
    correspondences: new Set(CORRESPONDENCES.map(({ id }) => id)),
    habits: new Set(),
    irregularWords: new Set(),
  },
  lexicon: builtLexicon,
  screen: makePlainScreen(['sit', 'map', 'bep'], ['tun']),
};

export const beginnings =
  'b=B d=D f=F h=HH l=L m=M n=N p=P r=R s=S t=T w=W sh=SH ch=CH bl=B+L st=S+T tr=T+R'.split(
    ' ',
  ) as CardId[];
export const vowels = 'a=AE e=EH i=IH o=AA u=AH a_e=EY i_e=AY ee=IY'.split(' ') as CardId[];
export const endings = 'b=B d=D g=G m=M n=N p=P t=T ck=K ss=S sh=SH k=K ng=NG nd=N+D st=S+T'.split(
  ' ',
) as CardId[];

/** All combinations of these piles, judged. */
export function tableOf(
  piles: readonly (readonly CardId[])[],
  own: JudgeContext = context,
): WordTable {
  return makeWordTable(shapeById.get('syllable') as Shape, piles, own);
}

/** The whole board of the cards above: 17 × 8 × 14. */
export const wholeBoard: WordTable = tableOf([beginnings, vowels, endings]);

/** Boards of some of these cards. */
export const boards: fc.Arbitrary<{
  readonly piles: readonly (readonly CardId[])[];
  readonly table: WordTable;
}> = fc
  .tuple(
    fc.subarray(beginnings, { minLength: 1, maxLength: 10 }),
    fc.subarray(vowels, { minLength: 1, maxLength: 5 }),
    fc.subarray(endings, { minLength: 1, maxLength: 10 }),
  )
  .map((piles) => ({ piles, table: tableOf(piles) }));

/** Boards of a few cards, which fall into parts that no single card joins, or make next to no words. */
export const sparseBoards: fc.Arbitrary<WordTable> = fc
  .tuple(
    fc.subarray(beginnings, { minLength: 1, maxLength: 3 }),
    fc.subarray(vowels, { minLength: 1, maxLength: 2 }),
    fc.subarray(endings, { minLength: 1, maxLength: 3 }),
  )
  .map((piles) => tableOf(piles));

/** Everything that must hold of any run over these piles; written from the rules, not from the code. */
export function checkRun(
  run: readonly Flip[],
  piles: readonly (readonly string[])[],
  own: JudgeContext = context,
): void {
  run.forEach((flip, at) => {
    flip.cards.forEach((id, pile) => {
      expect(piles[pile]).toContain(id);
    });
    const built = judgeWord(flip.cards, own);
    expect(built.kind).toBe(flip.kind);
    expect([flip.word, flip.sounds]).toEqual([built.word, built.sounds]);
    const before = run[at - 1];
    if (before) {
      const turned = flip.cards.filter((id, pile) => id !== before.cards[pile]);
      expect(turned).toHaveLength(1);
    }
  });
  expect(new Set(run.map(({ word }) => word)).size).toBe(run.length);
}

/** The pile that each flip after the first turns. */
export function turnsOf(run: readonly Flip[]): readonly number[] {
  return run
    .slice(1)
    .map(({ cards }, at) => cards.findIndex((id, pile) => id !== run[at]?.cards[pile]));
}

/** How many flips of a run turn one card into its look-alike. */
export function contrastTurnsIn(
  run: readonly Flip[],
  contrasts: readonly (readonly [string, string])[],
): number {
  return run.filter(({ cards }, at) => {
    const before = run[at - 1];
    const pile = before ? cards.findIndex((id, place) => id !== before.cards[place]) : -1;
    if (!before || pile < 0) return false;
    const turned = [before.cards[pile] as string, cards[pile] as string];
    return contrasts.some((pair) => turned.every((id) => pair.includes(id)));
  }).length;
}

/** How many look-alikes a run turns one into the other, each once in a pile. */
export function contrastsIn(
  run: readonly Flip[],
  contrasts: readonly (readonly [string, string])[],
): number {
  const turned = new Set<string>();
  run.slice(1).forEach(({ cards }, at) => {
    cards.forEach((id, pile) => {
      const before = run[at]?.cards[pile] as string;
      if (id === before) return;
      const pair = contrasts.find((ids) => ids.includes(id) && ids.includes(before));
      if (pair) turned.add(`${pile} ${[...pair].sort()}`);
    });
  });
  return turned.size;
}
