/**
 * What is measured here is measured on rendered pages, not on the numbers that went into them. Sizes
 * come from standards: ISO 216 and ANSI Y14.1 for paper, ISO 838 for holes, 3 × 5 in for index cards.
 */

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import type { CardId } from '../../core/language/card-id.ts';
import { CORRESPONDENCES } from '../../core/language/correspondences.ts';
import { type Area, crossings, inkBox, marginsAreWhite, renderPdf } from '../../test/pdf-pixels.ts';
import type { RingCount } from '../binder.ts';
import { makePdf } from '../document.ts';
import type { Turn } from '../duplex.ts';
import { inks } from '../ink.ts';
import type { Page } from '../page.ts';
import { PAPERS, type Paper } from '../paper.ts';
import { openTypeface } from '../typeface.ts';
import { ANDIKA } from '../typeface-files.ts';
import { cardPages } from './card-pages.ts';
import type { CardLook } from './front.ts';
import { CARD_KINDS, type CardKind, frameAt, gridOf } from './grid.ts';
import { ownCard, paperCard } from './paper-card.ts';
import { stripPages } from './strip-pages.ts';

const { resolve } = createRequire(import.meta.url);
const read = (name: string) => readFileSync(resolve(`@fontsource/andika/files/${name}`));
const typeface = openTypeface({
  regular: ANDIKA.regular.map(read),
  bold: ANDIKA.bold.map(read),
});
const look: CardLook = { inks: inks(false), typeface, grey: false, pictures: null };

/** Cards with every shape, tall and deep letters, the widest grapheme. */
const mixed: readonly CardId[] = [
  'sh=SH',
  'a=AE',
  'g=G',
  'p=P',
  'igh=AY',
  'a_e=EY',
  'st=S+T',
  'le=AX+L',
  'ed=T',
  've=V',
  'nk=NG+K',
  'ough=AO',
  'qu=K+W',
  'oo=UH',
  'ing=IH+NG',
  'str=S+T+R',
];

function cards(ids: readonly CardId[], kind: CardKind, paper: Paper, backs: Turn | null = null) {
  return cardPages(ids.map(paperCard), { kind, paper, backs }, look);
}

async function pixels(pages: readonly Page[], dpi: number) {
  return renderPdf(await makePdf({ title: 'Cards', pages }, typeface), dpi);
}

/** Millimetres of paper: US Letter 8.5 × 11 in; A4 of ISO 216. */
const published = { letter: [215.9, 279.4], a4: [210, 297] } as const;

describe('cards on paper', () => {
  it.each(PAPERS)('index cards on %s are cut to 3 × 5 in, to 0.2 mm', async (paper) => {
    const [page] = await pixels(cards(mixed.slice(0, 4), 'index', paper), 300);
    const [width, height] = published[paper];
    expect(page!.width).toBeCloseTo(width, 1);
    expect(page!.height).toBeCloseTo(height, 1);
    const across = crossings(page!, { y: 8 }, [0, width]);
    const down = crossings(page!, { x: 8 }, [0, height]);
    expect(across).toHaveLength(3);
    expect(down).toHaveLength(3);
    for (const [cuts, inches] of [
      [across, 3],
      [down, 5],
    ] as const) {
      for (const at of [1, 2]) {
        expect(Math.abs(cuts[at]! - cuts[at - 1]! - inches * 25.4)).toBeLessThan(0.2);
      }
    }
  });

  it('a half sheet is half of the sheet', async () => {
    const [page] = await pixels(cards(mixed.slice(0, 2), 'half', 'a4'), 200);
    const [cut, ...others] = crossings(page!, { y: 8 }, [0, 297]);
    expect(others).toEqual([]);
    expect(Math.abs(cut! - 148.5)).toBeLessThan(0.2);
  });

  it('the ruler measures 50 mm', async () => {
    const [page] = await pixels(cards(['m=M'], 'half', 'letter'), 300);
    const ends = crossings(page!, { y: 215.9 - 7 }, [0, 62]);
    expect(ends).toHaveLength(2);
    expect(Math.abs(ends[1]! - ends[0]! - 50)).toBeLessThan(0.2);
  });

  it('prints nothing within 6 mm of the edge, on either side, of any kind', async () => {
    const pages = PAPERS.flatMap((paper) => [
      ...CARD_KINDS.flatMap((kind) =>
        cards(mixed.slice(0, kind === 'desk' ? 16 : 2), kind, paper, 'long'),
      ),
      ...stripPages(
        [[paperCard('ough=AO')], [paperCard('a_e=EY')], [paperCard('le=AX+L')]],
        {
          paper,
          rings: 4,
          backs: 'short',
        },
        look,
      ),
    ]);
    const rasters = await pixels(pages, 60);
    expect(rasters).toHaveLength(16);
    rasters.forEach((raster, at) => {
      expect(marginsAreWhite(raster, 5.9), `page ${at + 1}`).toBe(true);
    });
  });

  it('prints every letter of every card: none blank, none as an empty box', async () => {
    const letters = [
      ...new Set(CORRESPONDENCES.flatMap(({ grapheme }) => [...grapheme.replace('_', '')])),
    ];
    expect(letters.length).toBeGreaterThan(25);
    const pages = cardPages(
      [...letters.map(ownCard)],
      { kind: 'desk', paper: 'a4', backs: null },
      look,
    );
    const rasters = await pixels(pages, 150);
    const grid = gridOf('desk', 'a4');
    letters.forEach((letter, at) => {
      const box = frameAt(grid, at % 16);
      const raster = rasters[Math.floor(at / 16)]!;
      const inside = {
        left: box.x + 1,
        top: box.y + 1,
        right: box.x + box.width - 1,
        bottom: box.y + box.height - 1,
      };
      const found = inkBox(raster, inside, 0.5);
      expect(found, letter).not.toBeNull();
      const em = Math.min(box.width * 0.58, box.height * 0.42);
      const { left, right, top, bottom } = typeface.ink(letter, em);
      // Its own size, which no empty box has, and its middle in the middle of the card.
      expect(Math.abs(found!.right - found!.left - (right - left)), letter).toBeLessThan(0.4);
      expect(Math.abs(found!.bottom - found!.top - (top - bottom)), letter).toBeLessThan(0.4);
      expect(
        Math.abs((found!.left + found!.right) / 2 - (box.x + box.width / 2)),
        letter,
      ).toBeLessThan(0.3);
    });
  });

  it('stands all letters on one baseline at one size', async () => {
    const [raster] = await pixels(
      cards(['m=M', 'h=HH', 'x=K+S', 'z=Z', 'p=P', 'g=G'], 'desk', 'letter'),
      200,
    );
    const boxes = [0, 1, 2, 3, 4, 5].map((at): Area => {
      const { x, y, width, height } = frameAt(gridOf('desk', 'letter'), at);
      const found = inkBox(
        raster!,
        { left: x + 1, top: y + 1, right: x + width - 1, bottom: y + height - 1 },
        0.5,
      )!;
      return { ...found, top: found.top - y, bottom: found.bottom - y };
    });
    const [m, h, x, z, p, g] = boxes as [Area, Area, Area, Area, Area, Area];
    for (const other of [h, x, z]) expect(Math.abs(other.bottom - m.bottom)).toBeLessThan(0.15);
    for (const deep of [p, g]) expect(deep.bottom).toBeGreaterThan(m.bottom + 3);
    expect(Math.abs(p.top - m.top)).toBeLessThan(0.15);
  });

  it('gives the same bytes for the same cards', async () => {
    const bytes = async () =>
      makePdf(
        { title: 'Cards', pages: cards(mixed, 'desk', 'a4', 'long'), turn: 'long' },
        typeface,
      );
    expect(Buffer.compare(await bytes(), await bytes())).toBe(0);
  });

  it('asks the print dialog for true size', async () => {
    const text = Buffer.from(
      await makePdf(
        { title: 'Cards', pages: cards(['m=M'], 'half', 'a4'), turn: 'short' },
        typeface,
      ),
    ).toString('latin1');
    // ISO 32000-1, table 150.
    expect(text).toMatch(/\/PrintScaling \/None/);
    expect(text).toMatch(/\/Duplex \/DuplexFlipShortEdge/);
  });
});

describe('backs', () => {
  const turns = [
    ['index', 'long'],
    ['index', 'short'],
    ['half', 'long'],
    ['half', 'short'],
  ] as const;
  it.each(turns)(
    'of %s cards lie behind their fronts, turned along the %s edge',
    async (kind, turn) => {
      // One card with a back among blank ones, at the first place of the sheet.
      const sheet = [
        paperCard('ck=K'),
        ...Array.from({ length: kind === 'half' ? 1 : 3 }, () => ownCard('')),
      ];
      const [, back] = await pixels(
        cardPages(sheet, { kind, paper: 'letter', backs: turn }, look),
        100,
      );
      const { width, height } = back!;
      const found = inkBox(back!, { left: 0, top: 0, right: width, bottom: height })!;
      // A sheet turned about an upright axis changes left and right; about a level one, top and bottom.
      // The long edge of an upright sheet is upright; of one that lies on its side it is level.
      const upright = (turn === 'long') === height > width;
      const behind = upright
        ? {
            left: width - found.right,
            right: width - found.left,
            top: found.top,
            bottom: found.bottom,
          }
        : {
            left: found.left,
            right: found.right,
            top: height - found.bottom,
            bottom: height - found.top,
          };
      const { x, y, width: wide, height: high } = frameAt(gridOf(kind, 'letter'), 0);
      expect(behind.left).toBeGreaterThan(x - 0.2);
      expect(behind.right).toBeLessThan(x + wide + 0.2);
      expect(behind.top).toBeGreaterThan(y - 0.2);
      expect(behind.bottom).toBeLessThan(y + high + 0.2);
      // Its head is at the head of the card: the large letters lie nearest to the card's top.
      expect(behind.top - y).toBeLessThan(high * 0.2);
    },
  );
});

describe('binder strips', () => {
  /** ISO 838: 80 ± 0.5 mm apart, 6 ± 0.5 mm wide, 12 ± 1 mm from the edge. Three rings: 4 1/4 in, common practice, no source. */
  const standards: readonly (readonly [RingCount, Paper, number, number, number])[] = [
    [2, 'a4', 80, 6, 12],
    [4, 'a4', 80, 6, 12],
    [3, 'letter', 4.25 * 25.4, (5 / 16) * 25.4, 12.7],
  ];
  it.each(standards)(
    'have their holes where %i rings are, on %s',
    async (rings, paper, apart, wide, from) => {
      const piles = (['b=B', 'a=AE', 'd=D', 'e=EH'] satisfies readonly CardId[])
        .slice(0, rings)
        .map((id) => [paperCard(id)]);
      const [page] = await pixels(stripPages(piles, { paper, rings, backs: null }, look), 300);
      // Level through the middles: left side, cross, right side of each hole.
      const level = crossings(page!, { y: from }, [0, page!.width], 0.05);
      expect(level).toHaveLength(3 * rings);
      const middles = Array.from({ length: rings }, (_, at) => level[3 * at + 1]!);
      for (let at = 0; at < rings; at += 1) {
        expect(Math.abs(level[3 * at + 2]! - level[3 * at]! - wide)).toBeLessThan(0.2);
        if (at > 0) expect(Math.abs(middles[at]! - middles[at - 1]! - apart)).toBeLessThan(0.2);
      }
      // The same on both sides of the middle, as every punch does it.
      expect(Math.abs((middles[0]! + middles.at(-1)! - page!.width) / 2)).toBeLessThan(0.2);
      const upright = crossings(page!, { x: middles[0]! }, [from - 6, from + 6], 0.05);
      expect(Math.abs((upright[0]! + upright.at(-1)!) / 2 - from)).toBeLessThan(0.2);
    },
  );
});
