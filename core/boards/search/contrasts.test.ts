import { describe, expect, test } from 'vitest';
import { builtLexicon as lexicon } from '../../../test/built-lexicon.ts';
import { makePlainScreen } from '../../../test/plain-screen.ts';
import type { CardId } from '../../language/card-id.ts';
import { SEQUENCE } from '../../sequence/built-in.ts';
import { stepOf } from '../../sequence/step-of.ts';
import { taughtUpTo } from '../../sequence/teach.ts';
import { makeRun } from '../runs/run.ts';
import { shapeById } from '../shapes/shape-list.ts';
import type { Shape } from '../shapes/shapes.ts';
import { cardsTaught } from '../shapes/taught-cards.ts';
import { findBoard } from './find-board.ts';

const syllable = shapeById.get('syllable') as Shape;
const screen = makePlainScreen(['bet', 'bid', 'dim']);
const limits = [8, 5, 8];

const pairs: readonly (readonly [CardId, CardId])[] = [
  ['e=EH', 'i=IH'],
  ['b=B', 'd=D'],
  ['ch=CH', 'sh=SH'],
  ['a=AE', 'a_e=EY'],
];

/** The best board with a pair a month after the later of the two came, when there are letters for both. */
function boardWith(pair: readonly [CardId, CardId], wishes = {}) {
  const steps = pair.map((id) => stepOf(SEQUENCE, { kind: 'card', id }) as number);
  const context = { taught: taughtUpTo(SEQUENCE, Math.max(...steps) + 8), lexicon, screen };
  const asked = { limits, contrasts: [pair], nodeLimit: 60, ...wishes };
  return findBoard(syllable, cardsTaught(context.taught), asked, context);
}

describe.each(pairs)('the best board with %s beside %s', (...pair) => {
  test.each([{}, { clean: true }])('has both in one pile %o', (wishes) => {
    const found = boardWith(pair, wishes);
    if (found.kind !== 'found') throw new Error(found.message);
    expect(found.board.piles.some((pile) => pair.every((id) => pile.includes(id)))).toBe(true);
  });

  test('turns the one into the other in a third of the flips of a run, and never above its bound', () => {
    const found = boardWith(pair);
    if (found.kind !== 'found') throw new Error(found.message);
    const wishes = { flips: 30, realShare: 0.5, contrasts: [pair], seed: 1 };
    const { flips, turned } = makeRun(found.table, wishes, lexicon);
    expect(flips).toHaveLength(30);
    const own = flips.filter(({ cards }, at) => {
      const before = flips[at - 1]?.cards;
      const changed = before?.findIndex((id, pile) => id !== cards[pile]) ?? -1;
      return (
        changed >= 0 &&
        [before?.[changed], cards[changed]].every((id) => pair.includes(id as CardId))
      );
    });
    expect(turned.flips).toBe(own.length);
    expect(turned.flips).toBeGreaterThanOrEqual(10);
    expect(turned.flips).toBeLessThanOrEqual(turned.atMost);
  });
});
