import type { Page } from 'playwright-core';
import { afterEach, describe, expect, it } from 'vitest';
import { recorded } from './recorded.ts';
import { stageCards, stagePlaces, stageRow, sweepLine, ticks } from './stage-page.ts';
import { openScreen, putRows } from './standing.ts';
import { flips } from './today-page.ts';
import { type Visit, type VisitSpec, visit } from './visit.ts';

let current: Visit | undefined;

afterEach(async () => {
  await current?.end();
  current = undefined;
});

/** Wide, narrow and split cards, as a board of later steps may hold them. */
const hardRows = [
  ['b=B', 'a=AE', 't=T'],
  ['sh=SH', 'i=IH', 'p=P'],
  ['str=S+T+R', 'igh=AY', 'tch=CH'],
  ['th=TH', 'eigh=EY', 'nch=N+CH'],
  ['m=M', 'a_e=EY', 'k=K'],
  ['squ=S+K+W', 'a_e=EY', 'nk=NG+K'],
];

/** Three-card words of three to six letters, among them a cluster, a split and a four-letter card. */
const threeCardWords = [
  ['b=B', 'a=AE', 't=T'],
  ['qu=K+W', 'i=IH', 'ck=K'],
  ['t=T', 'ee=IY', 'th=TH'],
  ['str=S+T+R', 'i=IH', 'p=P'],
  ['m=M', 'a_e=EY', 'k=K'],
  ['w=W', 'eigh=EY', 't=T'],
  ['c=K', 'a=AE', 'tch=CH'],
];

async function onStage(spec: VisitSpec, rows: readonly (readonly string[])[]): Promise<Page> {
  current = await visit({ ...spec, path: '#/today', upTo: 60 });
  const { page } = current;
  await putRows(page, rows);
  await flips(page).first().waitFor();
  await openScreen(page, 'stage', stageCards(page));
  return page;
}

interface Seen {
  readonly sizes: readonly number[];
  readonly baselines: readonly number[];
  readonly boxes: readonly {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  }[];
  /** How far letters reach beyond their own card, in pixels; 0 when all is well. */
  readonly clipped: number;
  readonly ascender: number;
}

/** The row as it is painted: sizes, baselines and the boxes of the cards. */
function look(page: Page): Promise<Seen> {
  return stageCards(page).evaluateAll((cards) => {
    const size = Number.parseFloat(getComputedStyle(cards[0] as Element).fontSize);
    const pen = document.createElement('canvas').getContext('2d') as CanvasRenderingContext2D;
    pen.font = `400 ${size}px Andika`;
    const reach = cards.map((card) => {
      const range = document.createRange();
      range.selectNodeContents(card);
      const text = range.getBoundingClientRect();
      const box = card.getBoundingClientRect();
      return Math.max(0, box.left - text.left, text.right - box.right);
    });
    return {
      sizes: cards.map((card) => Number.parseFloat(getComputedStyle(card).fontSize)),
      baselines: cards.map((card) => {
        const mark = document.createElement('span');
        mark.style.display = 'inline-block';
        card.append(mark);
        const { bottom } = mark.getBoundingClientRect();
        mark.remove();
        return Math.round(bottom * 10) / 10;
      }),
      boxes: cards.map((card) => {
        const { left, right, top, bottom } = card.getBoundingClientRect();
        return { left, right, top, bottom };
      }),
      clipped: Math.max(...reach),
      ascender: pen.measureText('h').actualBoundingBoxAscent,
    };
  });
}

const still = (page: Page) => page.waitForFunction(() => document.getAnimations().length === 0);

describe.each([
  { width: 1920, height: 1080 },
  { width: 1366, height: 768 },
])('on a screen of $width × $height', ({ width, height }) => {
  it('ascenders of a three-card word reach a quarter of the height above the baseline', async () => {
    const page = await onStage({ width, height }, threeCardWords);
    await still(page);
    for (const _ of threeCardWords) {
      const { ascender } = await look(page);
      expect(ascender).toBeGreaterThanOrEqual(height / 4);
      await page.keyboard.press('Space');
      await still(page);
    }
  });
});

describe.each([
  { width: 1920, height: 1080 },
  { width: 1366, height: 768 },
  { width: 390, height: 844 },
])('wide and split cards at $width × $height', ({ width, height }) => {
  it('are never clipped, stand on one baseline in one size, and stay on the screen', async () => {
    const page = await onStage({ width, height }, hardRows);
    for (const _ of hardRows) {
      await still(page);
      const { sizes, baselines, boxes, clipped } = await look(page);
      expect(new Set(sizes).size).toBe(1);
      expect(new Set(baselines).size).toBe(1);
      expect(clipped).toBeLessThan(0.5);
      for (const { left, right, top, bottom } of boxes) {
        expect(left).toBeGreaterThanOrEqual(0);
        expect(right).toBeLessThanOrEqual(width);
        expect(top).toBeGreaterThanOrEqual(0);
        expect(bottom).toBeLessThan(height);
      }
      const inOrder = boxes.toSorted((one, other) => one.left - other.left);
      inOrder.slice(1).forEach(({ left }, place) => {
        expect(left).toBeGreaterThanOrEqual(inOrder[place]?.right ?? 0);
      });
      await page.keyboard.press('Space');
    }
  });
});

describe('the stage', () => {
  it('puts the silent e as a half-arch behind the ending', async () => {
    const page = await onStage({}, [['m=M', 'a_e=EY', 'k=K']]);
    const cards = stageCards(page);
    expect(await cards.allTextContents()).toEqual(['m', 'a', 'k', 'e']);
    expect(await cards.nth(1).getAttribute('class')).toContain('arch');
    expect(await cards.nth(3).getAttribute('class')).toContain('half');
  });

  it('redraws only the card that was turned', async () => {
    const page = await onStage({}, [
      ['b=B', 'a=AE', 't=T'],
      ['sh=SH', 'a=AE', 't=T'],
    ]);
    await still(page);
    await stageCards(page).evaluateAll((cards) => {
      for (const card of cards) card.setAttribute('data-seen', '');
    });
    await page.keyboard.press('Space');
    const kept = await stageCards(page).evaluateAll((cards) =>
      cards.map((card) => card.hasAttribute('data-seen')),
    );
    expect(kept).toEqual([false, true, true]);
  });

  it('sweeps, answers, blanks, opens sound by sound, skips and goes back by keys', async () => {
    const page = await onStage({}, [
      ['b=B', 'a=AE', 't=T'],
      ['sh=SH', 'a=AE', 't=T'],
      ['sh=SH', 'i=IH', 't=T'],
    ]);
    expect(await sweepLine(page, 'gliding').count()).toBe(0);
    await page.keyboard.press('ArrowDown');
    await sweepLine(page, 'gliding').waitFor();
    await page.keyboard.press('t');
    await page.getByRole('img', { name: 'a nonsense word' }).waitFor();
    await page.keyboard.press('b');
    expect(await stageRow(page).count()).toBe(0);
    await page.keyboard.press('b');
    expect(await stageCards(page).allTextContents()).toEqual(['b', 'a', 't']);
    await page.keyboard.press('o');
    await page.keyboard.press('PageDown');
    await page.keyboard.press('PageDown');
    expect(await stagePlaces(page, 'waiting').count()).toBeGreaterThan(0);
    await page.keyboard.press('x');
    expect(await ticks(page, 'skipped').count()).toBe(1);
    await page.keyboard.press('PageUp');
    expect(await ticks(page, 'skipped').count()).toBe(0);
    await page.keyboard.press('?');
    await page.getByRole('dialog', { name: 'Keys of the stage' }).waitFor();
    await page.keyboard.press('Escape');
    expect(await stageRow(page).count()).toBe(1);
    await page.keyboard.press('Escape');
    await page.getByRole('heading', { name: /^Whole class · / }).waitFor();
    expect(current?.errors).toEqual([]);
  });

  it('works by touching: under the row sweeps, on her side goes on, on the far side back', async () => {
    const page = await onStage({ width: 1366, height: 768 }, [
      ['b=B', 'a=AE', 't=T'],
      ['sh=SH', 'a=AE', 't=T'],
    ]);
    await page.mouse.click(700, 640);
    await sweepLine(page, 'gliding').waitFor();
    await page.mouse.click(1200, 60);
    expect(await stageCards(page).first().textContent()).toBe('sh');
    await page.mouse.click(100, 60);
    expect(await stageCards(page).first().textContent()).toBe('b');
  });

  it('draws the line after a finger under the row', async () => {
    const page = await onStage({ width: 1366, height: 768 }, [['b=B', 'a=AE', 't=T']]);
    await page.mouse.move(200, 640);
    await page.mouse.down();
    await page.mouse.move(700, 640, { steps: 5 });
    const half = await sweepLine(page).evaluate((path) =>
      Number((path as SVGElement).style.strokeDashoffset),
    );
    expect(half).toBeGreaterThan(0.2);
    expect(half).toBeLessThan(0.8);
    await page.mouse.move(1300, 640, { steps: 5 });
    await page.mouse.up();
    expect(await sweepLine(page).evaluate((path) => getComputedStyle(path).strokeDashoffset)).toBe(
      '0px',
    );
    expect(await sweepLine(page, 'gliding').count()).toBe(0);
    expect(await stageCards(page).first().textContent()).toBe('b');
  });

  it('moves nothing for those who asked for reduced motion: the card and the line are simply there', async () => {
    const page = await onStage({}, [
      ['b=B', 'a=AE', 't=T'],
      ['sh=SH', 'a=AE', 't=T'],
    ]);
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await page.keyboard.press('Space');
    await page.keyboard.press('s');
    expect(await page.evaluate(() => document.getAnimations().length)).toBe(0);
    const line = sweepLine(page);
    expect(await line.evaluate((path) => getComputedStyle(path).strokeDashoffset)).toBe('0px');
    expect(await line.evaluate((path) => getComputedStyle(path).visibility)).toBe('visible');
  });

  it('goes on from where it stood after a reload', async () => {
    const page = await onStage({}, [
      ['b=B', 'a=AE', 't=T'],
      ['sh=SH', 'a=AE', 't=T'],
      ['sh=SH', 'i=IH', 't=T'],
    ]);
    await page.keyboard.press('Space');
    await expect
      .poll(async () => (await recorded(page)).filter(({ kind }) => kind === 'shown').length)
      .toBe(2);
    await page.reload({ waitUntil: 'load' });
    await stageCards(page).first().waitFor();
    expect(await stageCards(page).allTextContents()).toEqual(['sh', 'a', 't']);
  });
});
