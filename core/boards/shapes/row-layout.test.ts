import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ASCENDER, CARD_HEIGHT, layOut, type RowLayout } from './row-layout.ts';

const screens = [
  { width: 1920, height: 1080 },
  { width: 1366, height: 768 },
];
const phone = { width: 390, height: 844 };

/** Widths in em of cards: one letter, two letters, three, four, as Andika draws them. */
const widths = fc.constantFrom(1.06, 1.2, 1.5, 1.92, 2.37);
const rows = fc.array(fc.tuple(widths, widths, widths), { minLength: 1, maxLength: 30 });

function ends(row: RowLayout): readonly [number, number] {
  return [row.from * row.size, row.to * row.size];
}

describe('the layout of a run', () => {
  it('never lets a card leave the screen, whatever its letters', () => {
    fc.assert(
      fc.property(rows, fc.constantFrom(...screens, phone), (cards, space) => {
        for (const row of layOut(cards, 3, space).rows) {
          const [from, to] = ends(row);
          expect(from).toBeGreaterThanOrEqual(-space.width / 2);
          expect(to).toBeLessThanOrEqual(space.width / 2);
          expect(row.size * CARD_HEIGHT).toBeLessThan(space.height * 0.75);
        }
      }),
    );
  });

  it('never lets two cards of a row touch', () => {
    fc.assert(
      fc.property(rows, fc.constantFrom(...screens, phone), (cards, space) => {
        layOut(cards, 3, space).rows.forEach(({ lefts }, place) => {
          const row = cards[place] as readonly number[];
          for (let card = 1; card < row.length; card += 1) {
            const end = (lefts[card - 1] as number) + (row[card - 1] as number);
            expect(lefts[card] as number).toBeGreaterThan(end);
          }
        });
      }),
    );
  });

  it.each(screens)(
    'gives rows of one-letter and two-letter cards letters of a quarter of the height, at %o',
    (space) => {
      const cards = [
        [1.5, 1.06, 1.06],
        [1.06, 1.06, 1.5],
        [1.06, 1.06, 1.06],
      ];
      for (const { size } of layOut(cards, 3, space).rows) {
        expect(size * ASCENDER).toBeGreaterThanOrEqual(space.height / 4);
      }
    },
  );

  it.each(screens)(
    'keeps that size for narrow rows when one wide row is too wide for it, at %o',
    (space) => {
      const { rows: laid } = layOut(
        [
          [1.06, 1.06, 1.06],
          [2.1, 2.37, 1.92],
        ],
        3,
        space,
      );
      expect((laid[0] as RowLayout).size * ASCENDER).toBeGreaterThanOrEqual(space.height / 4);
      expect((laid[1] as RowLayout).size).toBeLessThan((laid[0] as RowLayout).size);
    },
  );

  it('leaves the other cards where they are when one outer card is turned', () => {
    const { rows: laid } = layOut(
      [
        [1.06, 1.06, 1.06],
        [1.5, 1.06, 1.06],
        [1.5, 1.06, 1.5],
      ],
      3,
      { width: 1920, height: 1080 },
    );
    const [first, second, third] = laid as [RowLayout, RowLayout, RowLayout];
    expect(second.lefts.slice(1)).toEqual(first.lefts.slice(1));
    expect(third.lefts).toEqual(second.lefts);
    expect(new Set(laid.map(({ size }) => size)).size).toBe(1);
  });

  it('places a silent e behind the last card', () => {
    const { rows: laid } = layOut([[1.06, 1.06, 1.06, 0.92]], 3, { width: 1920, height: 1080 });
    const { lefts } = laid[0] as RowLayout;
    expect(lefts).toHaveLength(4);
    expect(lefts[3] as number).toBeGreaterThan((lefts[2] as number) + 1.06);
  });
});
