import { describe, expect, test } from 'vitest';
import { builtLexicon } from '../../../test/built-lexicon.ts';
import { makePlainScreen } from '../../../test/plain-screen.ts';
import type { CardId } from '../../language/card-id.ts';
import { CORRESPONDENCES } from '../../language/correspondences.ts';
import { shapeById } from '../shapes/shape-list.ts';
import type { Shape } from '../shapes/shapes.ts';
import { judgeWord } from './judge.ts';
import { makeRowJudge } from './row-judge.ts';
import { swapsFor } from './swap.ts';

const context = {
  taught: {
    correspondences: new Set(CORRESPONDENCES.map(({ id }) => id)),
    habits: new Set<never>(),
    irregularWords: new Set<string>(),
  },
  lexicon: builtLexicon,
  screen: makePlainScreen([]),
};
const judge = makeRowJudge(shapeById.get('closed') as Shape, context);
const piles: readonly (readonly CardId[])[] = [
  ['b=B', 'd=D', 'm=M'],
  ['a=AE', 'i=IH'],
  ['t=T', 'n=N', 'g=G'],
];

/** Real words of a board, counted one by one. */
function realWords(board: readonly (readonly CardId[])[]): number {
  const [first = [], second = [], third = []] = board;
  return first
    .flatMap((b) => second.flatMap((v) => third.map((e) => judgeWord([b, v, e], context))))
    .filter(({ kind }) => kind === 'real').length;
}

describe('a card that comes into a full pile', () => {
  test('is told for each card what the swap does to the real words, the cheapest first', () => {
    const swaps = swapsFor(judge, piles, 2, 'p=P');
    expect(swaps.map(({ out }) => out).toSorted()).toEqual(['g=G', 'n=N', 't=T']);
    for (const { out, words } of swaps) {
      const after = piles.map((pile) => pile.map((id) => (id === out ? 'p=P' : id)));
      expect(words).toBe(realWords(after) - realWords(piles));
    }
    expect(swaps.map(({ words }) => words)).toEqual(
      swaps.map(({ words }) => words).toSorted((one, other) => other - one),
    );
  });

  test('never takes the place of a held card', () => {
    const swaps = swapsFor(judge, piles, 2, 'p=P', ['t=T']);
    expect(swaps.map(({ out }) => out)).not.toContain('t=T');
  });
});
