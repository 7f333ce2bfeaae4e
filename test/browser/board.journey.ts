import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { parseBoardLink } from '../../core/boards/shapes/board-link.ts';
import {
  cardFor,
  cardIn,
  count,
  draggedCard,
  inPile,
  pile,
  realCells,
  told,
  wordCells,
} from './board-page.ts';
import { barriersIn, fitsAcross } from './looks.ts';
import { openScreen } from './standing.ts';
import { flips } from './today-page.ts';
import { type Visit, visit } from './visit.ts';

let current: Visit;

beforeAll(async () => {
  current = await visit({ path: '#/about', upTo: STEP });
});

afterAll(() => current.end());

const BOARD = 'v=1&piles=b.d.m.s,a.i,t.n.g.ck&shape=closed';
/** A step by which all these cards were taught, and more. */
const STEP = 33;

/** The class at the board, with these cards on the table and nothing else remembered of boards. */
async function atBoard(link = BOARD): Promise<Visit> {
  const { page } = current;
  await page.evaluate(() => {
    for (const name of ['board', 'boards', 'board-wishes', 'earlier-boards-by-group']) {
      localStorage.removeItem(`sweepline.${name}`);
    }
    location.hash = '#/about';
  });
  await page.reload({ waitUntil: 'load' });
  await openScreen(page, `board?${link}`, wordCells(page).filter({ hasText: /\w/ }));
  return current;
}

/** What the sentence on hidden words says nobody wants to hear. */
const toRegret = async (page: Page): Promise<number> =>
  Number(
    /(\d+) to regret/.exec((await page.getByText(/stays? hidden/).textContent()) ?? '')?.[1] ?? 0,
  );

/** What the grid of words shows, counted again from the page. */
const realInGrid = (page: Page): Promise<number> => realCells(page).count();

async function middleOf(locator: Locator): Promise<{ readonly x: number; readonly y: number }> {
  await locator.scrollIntoViewIfNeeded();
  const box = await locator.boundingBox();
  if (!box) throw new Error('it is not on the page');
  return { x: box.x + box.width / 2, y: box.y + Math.min(box.height / 2, 140) };
}

describe('cards on the table', () => {
  it('move by dragging, and the counts and the words change with them', async () => {
    const { page, errors } = await atBoard();
    const before = await count(page, 'real words');
    expect(before).toBeGreaterThan(8);
    expect(await realInGrid(page)).toBe(before);
    const name = await cardIn(page, 'Beginnings', 'b').getAttribute('aria-label');
    const [, adds] = /adds (\d+) real word/.exec(name ?? '') ?? [];

    const from = await middleOf(cardIn(page, 'Beginnings', 'b'));
    const tray = await page.getByRole('heading', { name: 'Could lie here too' }).boundingBox();
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move((tray?.x ?? 0) + 60, (tray?.y ?? 0) + 10, { steps: 6 });
    expect(await draggedCard(page).count()).toBe(1);
    await page.mouse.up();
    expect(await inPile(page, 'Beginnings')).toEqual(['d=D', 'm=M', 's=S']);
    expect(await count(page, 'real words')).toBe(before - Number(adds));
    expect(await realInGrid(page)).toBe(before - Number(adds));
    expect(await draggedCard(page).count()).toBe(0);

    await page.getByRole('button', { name: 'Undo' }).click();
    expect(await inPile(page, 'Beginnings')).toEqual(['b=B', 'd=D', 'm=M', 's=S']);
    expect(await count(page, 'real words')).toBe(before);
    expect(errors).toEqual([]);
  });

  it('dragged where they cannot stand stay where they lay, and it is said why', async () => {
    const { page } = await atBoard();
    const from = await middleOf(cardIn(page, 'Beginnings', 'd'));
    const vowels = await middleOf(pile(page, 'Vowels'));
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(vowels.x, vowels.y, { steps: 6 });
    await page.mouse.up();
    expect(await inPile(page, 'Beginnings')).toContain('d=D');
    expect(await told(page).textContent()).toContain('d is no vowel');
  });

  it('move by keys alone: out, in and from pile to pile, each told in a live line', async () => {
    const { page } = await atBoard();
    await cardIn(page, 'Beginnings', 'b').focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('3');
    expect(await inPile(page, 'Beginnings')).toEqual(['b=B', 'm=M', 's=S']);
    expect(await inPile(page, 'Endings')).toEqual(['t=T', 'n=N', 'g=G', 'ck=K', 'd=D']);
    expect(await told(page).textContent()).toBe(
      `Now ${await count(page, 'real words')} real words, ${await count(page, 'nonsense')} nonsense` +
        `${(await toRegret(page)) > 0 ? `, ${await toRegret(page)} to regret` : ''}.`,
    );
    const focused = () => page.evaluate(() => document.activeElement?.getAttribute('data-card'));
    expect(await focused()).toBe('m=M');
    await page.keyboard.press('Delete');
    expect(await inPile(page, 'Beginnings')).toEqual(['b=B', 's=S']);
    expect(await focused()).toBe('s=S');
    await page.keyboard.press('2');
    expect(await told(page).textContent()).toContain('s is no vowel');

    await cardFor(page, 'Beginnings', 'm').focus();
    await page.keyboard.press('1');
    expect(await inPile(page, 'Beginnings')).toEqual(['b=B', 's=S', 'm=M']);
    await page.keyboard.press('Control+z');
    await page.keyboard.press('Control+z');
    await page.keyboard.press('Control+z');
    expect(await inPile(page, 'Beginnings')).toEqual(['b=B', 'd=D', 'm=M', 's=S']);
  });

  it('move under a finger that holds them, and the page scrolls under one that does not', async () => {
    const { page } = await atBoard();
    await page.setViewportSize({ width: 800, height: 1000 });
    const session = await page.context().newCDPSession(page);
    await session.send('Emulation.setTouchEmulationEnabled', { enabled: true });
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', x = 0, y = 0) =>
      session.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: type === 'touchEnd' ? [] : [{ x, y }],
      });
    const from = await middleOf(cardIn(page, 'Beginnings', 'd'));
    const to = await middleOf(pile(page, 'Endings'));
    await touch('touchStart', from.x, from.y);
    await draggedCard(page).waitFor();
    await touch('touchMove', (from.x + to.x) / 2, to.y);
    await touch('touchMove', to.x, to.y);
    await touch('touchEnd');
    await cardIn(page, 'Endings', 'd').waitFor();
    expect(await inPile(page, 'Beginnings')).not.toContain('d=D');

    const start = await middleOf(cardIn(page, 'Beginnings', 'm'));
    const scrolled = await page.evaluate(() => scrollY);
    await touch('touchStart', start.x, start.y);
    for (let step = 1; step <= 6; step += 1) await touch('touchMove', start.x, start.y - step * 30);
    await touch('touchEnd');
    await page.waitForFunction((before) => scrollY > before, scrolled);
    expect(await inPile(page, 'Beginnings')).toContain('m=M');

    await cardIn(page, 'Beginnings', 's')
      .tap()
      .catch(() => cardIn(page, 'Beginnings', 's').click());
    await page.getByRole('button', { name: 'Take out' }).click();
    expect(await inPile(page, 'Beginnings')).toEqual(['b=B', 'm=M']);
    await session.send('Emulation.setTouchEmulationEnabled', { enabled: false });
    await session.detach();
    await page.setViewportSize({ width: 1366, height: 768 });
  });

  it('a tap tells what a card adds, where it can go, and why it cannot stand elsewhere', async () => {
    const { page } = await atBoard();
    await cardIn(page, 'Endings', 'ck').click();
    const sheet = page.getByRole('dialog', { name: 'ck' });
    const text = await sheet.textContent();
    expect(text).toMatch(/Without ck, \d+ real words? and \d+ nonsense would go/);
    expect(text).toContain('stand after a vowel, never at the beginning.');
    expect(text).toContain('ck is no vowel');
    await sheet.getByRole('button', { name: 'Take out' }).click();
    expect(await inPile(page, 'Endings')).toEqual(['t=T', 'n=N', 'g=G']);
  });
});

describe('the best board', () => {
  it('is laid, says what is proven of it, and has the card that was asked for', async () => {
    const { page } = await atBoard();
    const before = await count(page, 'real words');
    await page.getByRole('button', { name: 'Make the best board' }).click();
    await told(page)
      .filter({ hasText: /Proven best|proven best/ })
      .waitFor();
    expect(await count(page, 'real words')).toBeGreaterThan(before);
    expect((await inPile(page, 'Beginnings')).length).toBeLessThanOrEqual(8);

    await cardFor(page, 'Endings', 'x').click();
    await page.getByRole('button', { name: 'Best board with x' }).click();
    await cardIn(page, 'Endings', 'x').waitFor();
    await told(page)
      .filter({ hasText: /Proven best|proven best/ })
      .waitFor();
    await page.getByRole('button', { name: 'Earlier boards (2)' }).click();
    expect(await page.getByRole('button', { name: 'Lay it again' }).count()).toBe(2);
    await page.keyboard.press('Escape');
  });

  it('for paper has nothing stopped; pins that cannot lie together are told kindly', async () => {
    const { page } = await atBoard();
    await page.getByLabel('What the best board is for').selectOption('paper');
    await page.getByRole('button', { name: 'Make the best board' }).click();
    await told(page)
      .filter({ hasText: /roven best/ })
      .waitFor();
    expect(await page.getByText(/stays? hidden/).textContent()).toMatch(/none to regret.* paper/);

    await page.getByLabel('Room for vowels').selectOption('5');
    await page.evaluate(() =>
      localStorage.setItem(
        'sweepline.board',
        JSON.stringify({
          board: { shape: 'closed', piles: [['b=B'], ['a=AE'], ['t=T']] },
          room: { closed: [8, 1, 8] },
        }),
      ),
    );
    await page.evaluate(() =>
      localStorage.setItem(
        'sweepline.board-wishes',
        JSON.stringify({ held: ['a=AE', 'i=IH'], use: 'screen' }),
      ),
    );
    await page.reload({ waitUntil: 'load' });
    await page.getByRole('button', { name: 'Make the best board' }).click();
    await page.getByText('more cards than this pile holds').waitFor();
    expect(await inPile(page, 'Beginnings')).toEqual(['b=B']);
  });
});

describe('boards kept and handed on', () => {
  it('are there after a reload under their names, can be renamed, and removed with a way back', async () => {
    const { page } = await atBoard();
    await page.getByRole('button', { name: 'Keep this board' }).click();
    await page.getByRole('textbox', { name: 'Name' }).fill('Monday’s board');
    await page.keyboard.press('Enter');
    await page.reload({ waitUntil: 'load' });
    await pile(page, 'Beginnings').getByRole('button').first().waitFor();
    expect(await inPile(page, 'Beginnings')).toEqual(['b=B', 'd=D', 'm=M', 's=S']);
    await cardIn(page, 'Beginnings', 'b').focus();
    await page.keyboard.press('Delete');

    await page.getByRole('button', { name: /^Your boards/ }).click();
    await page.getByRole('button', { name: 'Open Monday’s board' }).click();
    expect(await inPile(page, 'Beginnings')).toEqual(['b=B', 'd=D', 'm=M', 's=S']);
    await page.getByRole('button', { name: /^Your boards/ }).click();
    await page.getByRole('button', { name: 'Rename Monday’s board' }).click();
    await page.getByRole('textbox', { name: 'Name' }).fill('Short i and a');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Remove Short i and a' }).click();
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByRole('button', { name: /^Your boards/ }).click();
    await page.getByRole('button', { name: 'Open Short i and a' }).click();
  });

  it('open elsewhere from a link that holds the cards and nothing of the person', async () => {
    const { page, url } = await atBoard();
    await page.context().grantPermissions(['clipboard-read', 'clipboard-write'], { origin: url });
    await page.getByRole('button', { name: 'Keep this board' }).click();
    await page.getByRole('textbox', { name: 'Name' }).fill('Willow');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Copy a link' }).click();
    await page.getByText('Copied: the cards, and nothing else.').waitFor();
    const link = await page.evaluate(() => navigator.clipboard.readText());
    expect(link).toBe(`${url}#/board?${BOARD}`);
    expect(parseBoardLink(link.slice(link.indexOf('?') + 1))).toEqual({
      kind: 'board',
      board: {
        shape: 'closed',
        piles: [
          ['b=B', 'd=D', 'm=M', 's=S'],
          ['a=AE', 'i=IH'],
          ['t=T', 'n=N', 'g=G', 'ck=K'],
        ],
      },
    });

    const other = await visit({ path: `#/board?${BOARD}` });
    try {
      await wordCells(other.page).filter({ hasText: /\w/ }).first().waitFor();
      expect(await inPile(other.page, 'Endings')).toEqual(['t=T', 'n=N', 'g=G', 'ck=K']);
      expect(await other.page.getByText('not taught yet', { exact: true }).count()).toBe(10);
      expect(await realInGrid(other.page)).toBe(0);
      expect(new URL(other.page.url()).hash).toBe('#/board');
    } finally {
      await other.end();
    }
  });

  it('a broken link says what to do, and the board on the table stays', async () => {
    const { page } = await atBoard();
    const why = told(page).filter({ hasText: /\w/ });
    await openScreen(page, 'board?v=1&piles=b,a,j&shape=closed', why);
    expect(await told(page).textContent()).toContain('where it cannot lie');
    expect(await inPile(page, 'Beginnings')).toEqual(['b=B', 'd=D', 'm=M', 's=S']);
    expect(new URL(page.url()).hash).toBe('#/board');
  });

  it('become today’s blending, and today’s board can be opened here', async () => {
    const { page } = await atBoard();
    await page.getByRole('button', { name: 'Use it today' }).click();
    await page.getByText('Today’s blending uses this board.').first().waitFor();
    await openScreen(page, 'today', flips(page));
    const words = await flips(page).allTextContents();
    expect(words.length).toBeGreaterThan(10);
    for (const word of words) expect(word).toMatch(/^[bdms][ai](t|n|g|ck)$/);
    await page.getByRole('link', { name: 'Open this board' }).click();
    await pile(page, 'Beginnings').getByRole('button').first().waitFor();
    expect(await inPile(page, 'Vowels')).toEqual(['a=AE', 'i=IH']);
  });
});

describe('the screen', () => {
  it.each([
    ['three piles', BOARD],
    ['five piles', 'v=1&piles=t.r,a.i,bb.ck,i.o,t.n&shape=doubled'],
  ])(
    'with %s passes the accessibility checks of WCAG A and AA, fits phones and stands still',
    async (_, link) => {
      const { page, errors } = await atBoard(link);
      await page.emulateMedia({ reducedMotion: 'reduce' });
      expect(await barriersIn(page)).toEqual([]);
      for (const width of [390, 320]) await fitsAcross(page, width, 700);
      await page.setViewportSize({ width: 1366, height: 768 });
      expect(await page.evaluate(() => document.getAnimations().length)).toBe(0);
      expect(errors).toEqual([]);
    },
  );

  it('tells the grid of words as a table: beginnings down, endings across, what is hidden and why', async () => {
    const { page } = await atBoard();
    const table = page.getByRole('table', { name: 'Words with i' });
    const heads = await table.getByRole('columnheader').allTextContents();
    expect(heads).toEqual(['t', 'n', 'g', 'ck']);
    const rows = await table.getByRole('row').allTextContents();
    expect(rows.slice(1).map((row) => row[0])).toEqual(['b', 'd', 'm', 's']);
    const hidden = table.getByRole('cell').filter({ hasText: 'hidden, ' }).first();
    expect(await hidden.textContent()).toContain('hidden, ');
    await hidden.focus();
    await page.getByText(/^Hidden[.:] .+\.$/).waitFor();
  });

  it('invites when nothing was taught', async () => {
    const newcomer = await visit({ path: '#/board' });
    try {
      await newcomer.page.getByText('A board needs a few letters').waitFor();
      await newcomer.page.getByRole('link', { name: 'What have they learned?' }).click();
      await newcomer.page.getByRole('heading', { name: 'What have they learned?' }).waitFor();
    } finally {
      await newcomer.end();
    }
  });
});
