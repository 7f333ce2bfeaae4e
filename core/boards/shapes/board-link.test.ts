import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CardId } from '../../language/card-id.ts';
import { CORRESPONDENCES } from '../../language/correspondences.ts';
import { makeBoardLink, parseBoardLink } from './board-link.ts';
import { SHAPES } from './shape-list.ts';
import { candidates } from './shapes.ts';

const boards = fc.constantFrom(...SHAPES).chain((shape) =>
  fc
    .tuple(
      ...candidates(shape, CORRESPONDENCES).map((pile) =>
        fc.shuffledSubarray(
          pile.map(({ id }) => id),
          { maxLength: Math.min(16, pile.length) },
        ),
      ),
    )
    .map((piles) => ({ shape: shape.id, piles })),
);

describe('a board as a link', () => {
  test('comes back as it was, its cards in their order', () => {
    fc.assert(
      fc.property(boards, (board) => {
        expect(parseBoardLink(makeBoardLink(board))).toEqual({ kind: 'board', board });
      }),
      { numRuns: 300 },
    );
  });

  test('brings every card that any pile takes through', () => {
    for (const shape of SHAPES) {
      candidates(shape, CORRESPONDENCES).forEach((pile, at) => {
        for (const { id } of pile) {
          const piles = shape.piles.map((_, other) => (other === at ? [id] : []));
          const board = { shape: shape.id, piles };
          expect(parseBoardLink(makeBoardLink(board))).toEqual({ kind: 'board', board });
        }
      });
    }
  });

  test('brings syllables through, with every card they carry', () => {
    const piles = [
      ['nap=n=N.a=AE.p=P', 'ti=t=T.i=AY', 'place=p=P.l=L.a_e=EY.c=S'],
      ['kin=k=K.i=IH.n=N', 'ger=g=G.er=ER', 'tion=ti=SH.o=AX.n=N', 'ble=b=B.le=AX+L'],
    ] as readonly (readonly CardId[])[];
    const board = { shape: 'beats', piles };
    const link = makeBoardLink(board);
    expect(link).toMatch(/^[A-Za-z0-9\-._~!$&'()*+,;=:@/?]*$/);
    expect(parseBoardLink(link)).toEqual({ kind: 'board', board });
    expect(parseBoardLink('v=1&piles=~n~p,~k~i~n&shape=beats')).toMatchObject({ code: 'card' });
    expect(parseBoardLink('v=1&piles=n,k&shape=beats')).toMatchObject({ code: 'place' });
  });

  test('is of signs that an address carries as they are (RFC 3986, fragment)', () => {
    fc.assert(
      fc.property(boards, (board) => {
        const link = makeBoardLink(board);
        expect(link).toMatch(/^[A-Za-z0-9\-._~!$&'()*+,;=:@/?]*$/);
        expect(new URL(`https://example.org/#/board?${link}`).hash).toBe(`#/board?${link}`);
      }),
    );
  });

  test('is short: letters, and sounds only where the letters have several', () => {
    const piles: readonly (readonly CardId[])[] = [
      ['b=B', 'sh=SH'],
      ['a=AE', 'a_e=EY'],
      ['t=T', 's=Z'],
    ];
    expect(makeBoardLink({ shape: 'syllable', piles })).toBe(
      'v=1&piles=b.sh,a.a_e,t.s!Z&shape=syllable',
    );
  });

  test.each([
    ['', 'form'],
    ['v=1', 'form'],
    ['piles=b,a,t&shape=closed', 'form'],
    ['v=1&piles=b,a,t', 'form'],
    [`v=1&piles=${'b.'.repeat(3000)},a,t&shape=closed`, 'form'],
    ['v=2&piles=b,a,t&shape=closed', 'version'],
    ['v=1&piles=b,a,t&shape=constructor', 'shape'],
    ['v=1&piles=b,a&shape=closed', 'shape'],
    ['v=1&piles=b,a,t,s&shape=closed', 'shape'],
    ['v=1&piles=b,a,qqx&shape=closed', 'card'],
    ['v=1&piles=__proto__,a,t&shape=closed', 'card'],
    ['v=1&piles=b,a,t!XX&shape=closed', 'card'],
    ['v=1&piles=b,a,j&shape=closed', 'place'],
    ['v=1&piles=a,b,t&shape=closed', 'place'],
  ])('%j is refused, with what to do: %s', (text, code) => {
    const read = parseBoardLink(text);
    expect(read).toMatchObject({ kind: 'refused', code });
    if (read.kind === 'refused') expect(read.message.length).toBeGreaterThan(10);
  });

  test('no text makes it throw, and what it reads it writes the same again', () => {
    const noise = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.tuple(boards, fc.nat(), fc.string()).map(([board, at, text]) => {
        const link = makeBoardLink(board);
        const cut = at % (link.length + 1);
        return link.slice(0, cut) + text + link.slice(cut);
      }),
    );
    fc.assert(
      fc.property(noise, (text) => {
        const read = parseBoardLink(text);
        if (read.kind !== 'board') return;
        expect(parseBoardLink(makeBoardLink(read.board))).toEqual(read);
      }),
      { numRuns: 500 },
    );
  });

  test('a card that stands twice in a pile lies there once', () => {
    expect(parseBoardLink('v=1&piles=b.b.b,a,t&shape=closed')).toEqual({
      kind: 'board',
      board: { shape: 'closed', piles: [['b=B'], ['a=AE'], ['t=T']] },
    });
  });
});
