import { expect, test } from 'vitest';
import { builtLexicon as lexicon } from '../../../test/built-lexicon.ts';
import { makePlainScreen } from '../../../test/plain-screen.ts';
import type { CardId } from '../../language/card-id.ts';
import { SEQUENCE } from '../../sequence/built-in.ts';
import { taughtUpTo } from '../../sequence/teach.ts';
import { hiddenOnBoard } from './hidden-on-board.ts';

const taught = taughtUpTo(SEQUENCE, 30);
const board = {
  shape: 'closed',
  piles: [
    ['s=S', 'f=F'],
    ['i=IH', 'a=AE'],
    ['n=N', 't=T'],
  ] satisfies readonly (readonly CardId[])[],
};

test('names every hidden word once, what is hers to decide first', () => {
  const screen = makePlainScreen(['sin', 'fin'], ['fat']);
  const hidden = hiddenOnBoard(board, { taught, lexicon, screen });
  expect(hidden.map(({ word, verdict }) => [word, verdict])).toEqual([
    ['fat', 'ask'],
    ['sin', 'stop'],
    ['fin', 'stop'],
  ]);
  expect(hidden[0]?.sounds).toEqual(['F', 'AE', 'T']);
});

test('a board with one empty pile hides nothing', () => {
  const screen = makePlainScreen(['sin']);
  const [first, second] = board.piles as unknown as [CardId[], CardId[]];
  for (const piles of [
    [first, second, []],
    [[], second, first],
  ])
    expect(hiddenOnBoard({ ...board, piles }, { taught, lexicon, screen })).toEqual([]);
});

test('a board that is none hides nothing', () => {
  const screen = makePlainScreen(['sin']);
  expect(
    hiddenOnBoard({ shape: 'closed', piles: [[], [], []] }, { taught, lexicon, screen }),
  ).toEqual([]);
  expect(hiddenOnBoard({ ...board, shape: 'round' }, { taught, lexicon, screen })).toEqual([]);
});
