import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CardId } from '../../../core/language/card-id.ts';
import { carryOver, type Lying, makeLying, parseLying, putIn, takeOut, trayOf } from './moves.ts';

const ids: readonly CardId[] = ['b=B', 't=T', 'sh=SH', 'a=AE', 'i=IH', 'ck=K'];
const boards = fc
  .array(fc.shuffledSubarray([...ids]), { minLength: 2, maxLength: 5 })
  .map((piles) => ({ shape: 'closed', piles }));

describe('a card and where it lies', () => {
  it.each<Lying>([
    { id: 'sh=SH', pile: 0 },
    { id: 'a_e=EY', pile: null },
    { id: 'x=K+S', pile: 3 },
  ])('is one text and is read again: %j', (lying) => {
    expect(parseLying(makeLying(lying))).toEqual(lying);
  });
});

describe('moving cards', () => {
  it('out and in again leaves the same cards', () => {
    fc.assert(
      fc.property(boards, fc.nat(), (board, chance) => {
        const pile = chance % board.piles.length;
        for (const id of board.piles[pile] ?? []) {
          const there = putIn(takeOut(board, pile, id), { id, pile: null }, pile);
          expect(there.piles.map((own) => own.toSorted())).toEqual(
            board.piles.map((own) => own.toSorted()),
          );
        }
      }),
    );
  });

  it('from pile to pile takes it from the one and adds it to the other alone', () => {
    const board = {
      shape: 'closed',
      piles: [['b=B', 't=T'], ['a=AE'], ['ck=K']] satisfies readonly (readonly CardId[])[],
    };
    expect(putIn(board, { id: 't=T', pile: 0 }, 2).piles).toEqual([
      ['b=B'],
      ['a=AE'],
      ['ck=K', 't=T'],
    ]);
  });

  it('leaves every fitting card either in its pile or in its tray', () => {
    fc.assert(
      fc.property(boards, ({ piles }) => {
        const fitting = piles.map(() => ids);
        trayOf(piles, fitting).forEach((tray, pile) => {
          expect([...tray, ...(piles[pile] ?? [])].toSorted()).toEqual(ids.toSorted());
        });
      }),
    );
  });
});

describe('another shape', () => {
  it('takes the cards that lie on the table, where they fit and as many as there is room for', () => {
    const fitting: readonly (readonly CardId[])[] = [
      ['b=B', 't=T', 'sh=SH'],
      ['a_e=EY'],
      ['t=T', 'ck=K'],
    ];
    expect(carryOver([['t=T', 'b=B'], ['a=AE'], ['ck=K']], fitting, [1, 5, 8])).toEqual([
      ['b=B'],
      [],
      ['t=T', 'ck=K'],
    ]);
  });
});
