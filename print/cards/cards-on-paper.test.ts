/**
 * What is measured here is measured on rendered pages, not on the numbers that went into them. Sizes
 * come from standards: ISO 216 and ANSI Y14.1 for paper, ISO 838 for holes, 3 × 5 in for index cards.
 */

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { type CardId, makeSightId } from '../../core/language/card-id.ts';
import { CORRESPONDENCES } from '../../core/language/correspondences.ts';
import { type Area, crossings, inkBox, marginsAreWhite, renderPdf } from '../../test/pdf-pixels.ts';
import { RING_COUNTS, type RingCount } from '../binder.ts';
import { makePdf } from '../document.ts';
import { type SheetTurn, TURNS } from '../duplex.ts';
import { inks } from '../ink.ts';
import type { Page, ShapeMark } from '../page.ts';
import { PAPERS, type Paper } from '../paper.ts';
import { openTypeface } from '../typeface.ts';
import { ANDIKA } from '../typeface-files.ts';
import { cardPages } from './card-pages.ts';
import { type CardLook, frontMarks, letterRoom } from './front.ts';
import { CARD_KINDS, type CardKind, frameAt, gridOf } from './grid.ts';
import { letterSizes } from './letter-size.ts';
import { charactersThatFit, LEAST_LETTERS } from './own-length.ts';
import { ownCard, paperCard, sightCard } from './paper-card.ts';
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

function cards(
  ids: readonly CardId[],
  kind: CardKind,
  paper: Paper,
  backs: SheetTurn | null = null,
) {
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
    const [high, wide] = published[paper];
    expect(page!.width).toBeCloseTo(wide, 1);
    expect(page!.height).toBeCloseTo(high, 1);
    const across = crossings(page!, { y: 8 }, [0, wide]);
    const down = crossings(page!, { x: 8 }, [0, high]);
    expect(across).toHaveLength(3);
    expect(down).toHaveLength(3);
    for (const [cuts, inches] of [
      [across, 5],
      [down, 3],
    ] as const) {
      for (const at of [1, 2]) {
        expect(Math.abs(cuts[at]! - cuts[at - 1]! - inches * 25.4)).toBeLessThan(0.2);
      }
    }
  });

  it('a half sheet is half of the sheet', async () => {
    const [page] = await pixels(cards(mixed.slice(0, 2), 'half', 'a4'), 200);
    const [cut, ...others] = crossings(page!, { x: 8 }, [20, 277]).filter(
      (y) => Math.abs(y - 148.5) < 6,
    );
    expect(others).toEqual([]);
    expect(Math.abs(cut! - 148.5)).toBeLessThan(0.2);
  });

  it('the ruler measures 5 cm and 2 in', async () => {
    const [page] = await pixels(cards(['m=M'], 'half', 'letter'), 300);
    const base = 279.4 / 2 + 0.4 + 2;
    const cm = crossings(page!, { y: base - 1.5 }, [15, 71.2]);
    const inches = crossings(page!, { y: base + 1.5 }, [15, 71.2]);
    expect(cm).toHaveLength(6);
    expect(inches).toHaveLength(3);
    expect(Math.abs(cm.at(-1)! - cm[0]! - 50)).toBeLessThan(0.2);
    expect(Math.abs(inches.at(-1)! - inches[0]! - 2 * 25.4)).toBeLessThan(0.2);
  });

  it.each([...CARD_KINDS, 'strips'] as const)('no cut mark strikes the ruler of %s', (kind) => {
    for (const paper of PAPERS) {
      for (const rings of RING_COUNTS) {
        const piles = Array.from({ length: rings }, () => [ownCard('m')]);
        const [page] =
          kind === 'strips'
            ? stripPages(piles, { paper, rings, backs: null }, look)
            : cards(['m=M'], kind, paper);
        const words = page!.marks.flatMap((mark) =>
          mark.kind === 'text' && /print at|5 cm|2 in/.test(mark.text)
            ? [{ ...mark, wide: typeface.lay(mark.text, mark.size).width }]
            : [],
        );
        expect(words).toHaveLength(3);
        const cuts = page!.marks.flatMap((mark) =>
          mark.kind === 'shape' && mark.stroke === look.inks.rule && mark.line === 0.15
            ? [mark.path.match(/[\d.]+/g)!.map(Number) as [number, number, number, number]]
            : [],
        );
        const struck = words.filter(({ x, y, size, wide }) =>
          cuts.some(
            ([x1, y1, x2, y2]) =>
              x1 < x + wide && x2 > x && y1 < y + size * 0.3 && y2 > y - size * 0.8,
          ),
        );
        expect(struck.map(({ text }) => `${paper} ${rings} ${text}`)).toEqual([]);
      }
    }
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
    expect(rasters).toHaveLength(18);
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
        left: box.x + 2,
        top: box.y + 2,
        right: box.x + box.width - 2,
        bottom: box.y + box.height - 4,
      };
      const found = inkBox(raster, inside, 0.5);
      expect(found, letter).not.toBeNull();
      const em = box.width / (1.035 + 2 * 0.09);
      const { left, right, top, bottom } = typeface.ink(letter, em);
      // Its own size, which no empty box has, and its middle near the middle of the card.
      expect(Math.abs(found!.right - found!.left - (right - left)), letter).toBeLessThan(0.4);
      expect(Math.abs(found!.bottom - found!.top - (top - bottom)), letter).toBeLessThan(0.4);
      expect(
        Math.abs((found!.left + found!.right) / 2 - (box.x + box.width / 2)),
        letter,
      ).toBeLessThan(0.05 * em);
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
        { left: x + 1, top: y + 1, right: x + width - 1, bottom: y + height - 4 },
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

describe('the letters of a set', () => {
  const all = CORRESPONDENCES.map(({ id }) => paperCard(id));
  const sizesOn = (kind: CardKind, set = all) =>
    letterSizes(set, letterRoom(frameAt(gridOf(kind, 'letter'), 0), false), typeface);

  it.each(CARD_KINDS)('have few sizes on %s cards, one to a family', (kind) => {
    const { full, of } = sizesOn(kind);
    const sizes = new Map<number, string[]>();
    for (const card of all) {
      const size = of(card);
      sizes.set(size, [...(sizes.get(size) ?? []), card.parts.join('')]);
      if (card.parts.join('').length === 1) expect(size).toBe(full);
    }
    expect(sizes.size).toBeLessThanOrEqual(5);
    for (const shape of ['split', 'cluster']) {
      const family = all.filter((card) => card.shape === shape);
      expect(new Set(family.map(of)).size, shape).toBe(1);
    }
  });

  // Tinker and others ask of letters on a wall 20 to 25 minutes of arc (from memory, no source).
  it.each([
    ['index', 4],
    ['half', 8],
  ] as const)('of %s cards can be read from %i m: x is 25 minutes of arc high', (kind, meters) => {
    const least = meters * 1000 * Math.tan(((25 / 60) * Math.PI) / 180);
    const set = ['m', 'b', 'sh', 'ck', 'igh', 'ing', 'ee', 'qu'].map(ownCard);
    const { of } = sizesOn(kind, set);
    for (const card of set) {
      const x = typeface.ink('x', of(card)).top;
      expect(x, card.parts[0]).toBeGreaterThanOrEqual(least);
    }
  });

  it('keeps every letter inside its frame, on cards of every kind', () => {
    for (const kind of CARD_KINDS) {
      const box = frameAt(gridOf(kind, 'letter'), 0);
      for (const pictured of [false, true]) {
        const sizes = letterSizes(all, letterRoom(box, pictured), typeface);
        const seen = { ...look, pictures: pictured ? new Map() : null };
        const outside = all.filter((card) =>
          frontMarks(card, box, { sizes, loose: true }, seen).some((mark) => {
            if (mark.kind !== 'text' || mark.align) return false;
            const ink = typeface.ink(mark.text, mark.size);
            return (
              mark.x + ink.left < box.x + 0.5 ||
              mark.x + ink.right > box.x + box.width - 0.5 ||
              mark.y - ink.top < box.y + 0.5 ||
              mark.y - ink.bottom > box.y + box.height - 2
            );
          }),
        );
        expect(outside.map(({ parts }) => parts.join(''))).toEqual([]);
      }
    }
  });

  it('are never too small for a child: a longer text of her own is refused, with how much fits', () => {
    for (const kind of CARD_KINDS) {
      const place = { kind, paper: 'a4', pictured: false } as const;
      const text = 'a text of our own that goes on and on and on until no card has room for it';
      const count = charactersThatFit(text, place, typeface)!;
      expect(count).toBeGreaterThan(6);
      expect(charactersThatFit(text.slice(0, count), place, typeface)).toBeNull();
      const card = ownCard(text.slice(0, count));
      expect(sizesOn(kind, [card]).of(card)).toBeGreaterThanOrEqual(LEAST_LETTERS * 0.97);
    }
  });

  it('of a long phrase do not make the words small', () => {
    const [word, phrase] = [ownCard('said'), ownCard('good morning everyone')];
    const { of } = sizesOn('index', [word, phrase]);
    expect(of(word)).toBe(sizesOn('index', [word]).of(word));
    expect(of(phrase)).toBeLessThan(of(word) / 2);
  });
});

describe('a loose card', () => {
  // Each is another letter when it is turned, or looks like one.
  const turned = ['b', 'd', 'p', 'q', 'n', 'u', 'w', 'm'];

  it.each(CARD_KINDS)(
    'says which way is up by a line at its foot, of kind %s, in gray too',
    async (kind) => {
      const grid = gridOf(kind, 'letter');
      const set = [...turned.map(ownCard), paperCard('sh=SH'), sightCard(makeSightId('said'), [])];
      const grey: CardLook = { ...look, inks: inks(true), grey: true };
      const pages = cardPages(set, { kind, paper: 'letter', backs: null }, grey);
      const rasters = await pixels(pages, 60);
      const per = grid.columns * grid.rows;
      set.forEach(({ parts }, at) => {
        const { x, y, width, height } = frameAt(grid, at % per);
        const raster = rasters[Math.floor(at / per)]!;
        const dark = (from: number) =>
          crossings(raster, { x: x + width / 4 }, [from, from + 4.6], 0.4).length;
        expect(dark(y + height - 5.2), parts.join('')).toBe(1);
        expect(dark(y + 1), parts.join('')).toBe(0);
      });
    },
  );

  it.each(CARD_KINDS.flatMap((kind) => TURNS.map((turn) => [kind, turn] as const)))(
    'says so on its back, of kind %s turned along the %s edge: at the foot, never at the head',
    async (kind, turn) => {
      const grid = gridOf(kind, 'letter');
      const set = (['b=B', 'd=D', 'p=P', 'qu=K+W', 'n=N', 'u=AH', 'w=W', 'm=M'] as const).map(
        paperCard,
      );
      const pages = cardPages(set, { kind, paper: 'letter', backs: turn }, look);
      const rasters = (await pixels(pages, 60)).filter((_, at) => at % 2 === 1);
      const per = grid.columns * grid.rows;
      set.forEach(({ parts }, at) => {
        const raster = rasters[Math.floor(at / per)]!;
        const front = frameAt(grid, at % per);
        // Over an upright axis left and right change; over a level one the page lies upside down.
        const isOverTop = (turn === 'short') === raster.height > raster.width;
        const x = isOverTop ? front.x : raster.width - front.x - front.width;
        const y = isOverTop ? raster.height - front.y - front.height : front.y;
        const dark = (from: number) =>
          crossings(raster, { x: x + front.width / 2 }, [from, from + 4.6], 0.4).length;
        const [top, bottom] = [dark(y + 0.6), dark(y + front.height - 5.2)];
        const [head, foot] = isOverTop ? [bottom, top] : [top, bottom];
        expect(foot, parts.join('')).toBe(1);
        expect(head, parts.join('')).toBe(0);
      });
    },
  );

  it.each(CARD_KINDS)('that is turned is never another letter, of kind %s', (kind) => {
    const box = { ...frameAt(gridOf(kind, 'letter'), 0), x: 0, y: 0 };
    const set = turned.map(ownCard);
    const sizes = letterSizes(set, letterRoom(box, false), typeface);
    for (const card of set) {
      const marks = frontMarks(card, box, { sizes, loose: true }, look);
      const lines = marks.filter(
        (mark): mark is ShapeMark => mark.kind === 'shape' && mark.fill === look.inks.sweep,
      );
      expect(lines, card.parts.join('')).toHaveLength(1);
      // Turned, the line would lie as far from the foot as it now lies from the head: beyond the letter.
      const heights = [...lines[0]!.path.matchAll(/-?[\d.]+[ ,](-?[\d.]+)/g)].map(([, y]) =>
        Number(y),
      );
      expect(heights.length).toBeGreaterThan(4);
      const letter = marks.find((mark) => mark.kind === 'text')!;
      if (letter.kind !== 'text') throw new Error('a card without its letter');
      const bottom = letter.y - typeface.ink(letter.text, letter.size).bottom;
      expect(Math.min(...heights), card.parts.join('')).toBeGreaterThan(bottom);
    }
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
  /** ISO 838: 80 ± 0.5 mm apart, 6 ± 0.5 mm wide, 12 ± 1 mm from the edge. North America: two 2 3/4 in, three 4 1/4 in, common practice, no source. */
  const standards: readonly (readonly [RingCount, Paper, number, number, number])[] = [
    [2, 'a4', 80, 6, 12],
    [2, 'letter', 2.75 * 25.4, (9 / 32) * 25.4, 12.7],
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
