import { readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { fromRoot } from '../../house/root.mjs';
import { type Serving, serve } from '../../house/serve.ts';
import { brought, children, copyOffered, panel, saveCopyButton } from './class-page.ts';
import { barriersIn, fitsAcross } from './looks.ts';
import { stageCards } from './stage-page.ts';
import { openScreen, taughtUpTo } from './standing.ts';
import { flips } from './today-page.ts';
import { type Visit, visit } from './visit.ts';

let browser: Visit;
const servings: Serving[] = [];

beforeAll(async () => {
  browser = await visit({ path: '#/about' });
});

afterEach(async () => {
  for (const page of browser.page.context().pages()) if (page !== browser.page) await page.close();
  while (servings.length > 0) await servings.pop()?.stop();
});

afterAll(() => browser?.end());

/** The app at an address of its own, so that nothing is kept there yet. */
async function arrive(): Promise<Page> {
  const serving = await serve({ folder: fromRoot('dist'), port: 0 });
  servings.push(serving);
  return openAt(serving.url);
}

/** One more window on the class at an address; `before` runs first in it. */
async function openAt(url: string, before: () => void = () => {}): Promise<Page> {
  const page = await browser.page.context().newPage();
  await page.addInitScript(before);
  await page.goto(new URL('#/class', url).href);
  await page.getByRole('heading', { level: 1 }).waitFor();
  return page;
}

/** A class of a few children and a small group, at step 30. */
async function atRoom4(): Promise<Page> {
  const page = await arrive();
  await taughtUpTo(page, 30);
  await page.getByRole('button', { name: 'Give it a name' }).click();
  await page.keyboard.type('Room 4');
  await page.keyboard.press('Enter');
  await page.getByLabel('Add children').fill('Tam\nWren\nOdalys\nTam');
  await page.getByRole('button', { name: 'Add 4 children' }).click();
  await page.getByLabel('Add a small group').fill('Willow');
  await page.keyboard.press('Enter');
  await panel(page, 'Willow').waitFor();
  return page;
}

const members = (page: Page, name: string) =>
  expect.poll(() => children(panel(page, name)).allTextContents());

/** Moves a child by the keyboard alone. */
async function move(page: Page, child: string, to: string): Promise<void> {
  await page.getByRole('button', { name: child, exact: true }).focus();
  await page.keyboard.press('Enter');
  await page.getByRole('dialog').getByRole('button', { name: to, exact: true }).focus();
  await page.keyboard.press('Enter');
}

/** Drags a child to a group. */
async function drag(page: Page, child: string, to: string): Promise<void> {
  await page.getByRole('button', { name: child, exact: true }).dragTo(panel(page, to));
}

/** What the file is called that a click saves, and what it holds. */
async function saved(page: Page, click: () => Promise<void>) {
  const [download] = await Promise.all([page.waitForEvent('download'), click()]);
  const text = readFileSync(await download.path(), 'utf8');
  return { name: download.suggestedFilename(), text };
}

const saveCopy = (page: Page) => saved(page, () => saveCopyButton(page).click());

async function bring(page: Page, text: string): Promise<void> {
  const path = join(tmpdir(), `brought-${process.pid}.jsonl`);
  writeFileSync(path, text);
  await page.getByLabel('Choose a file').setInputFiles(path);
}

describe('the class', () => {
  it('has groups at places of their own, and today’s warm-up is of the group at work', async () => {
    const page = await atRoom4();
    await page.getByText('Two children here are called Tam.').waitFor();
    await move(page, 'Wren', 'Willow');
    await members(page, 'Willow').toEqual(['Wren']);
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Wren');
    await drag(page, 'Odalys', 'Willow');
    await members(page, 'Willow').toEqual(['Odalys', 'Wren']);
    await members(page, 'No group').toEqual(['Tam', 'Tam']);

    await panel(page, 'Willow')
      .getByRole('link', { name: /step 30 of/ })
      .click();
    const line = page.getByRole('slider', { name: 'Taught up to here' });
    await line.focus();
    await page.keyboard.press('PageUp');
    const upTo = await line.getAttribute('aria-valuenow');
    expect(Number(upTo)).toBeLessThan(30);
    await openScreen(page, 'today', flips(page));
    const run = () => flips(page).allTextContents();
    const ofWillow = await run();

    const atWork = page.getByRole('button', { name: /^At work/ });
    expect(await atWork.textContent()).toContain(`Willow· step ${upTo} of`);
    await atWork.click();
    await page
      .getByRole('dialog')
      .getByRole('button', { name: /^Whole class/ })
      .click();
    await expect.poll(() => atWork.textContent()).toContain('Whole class· step 30 of');
    await expect.poll(run).not.toEqual(ofWillow);
    await page.reload();
    await flips(page).first().waitFor();
    await atWork.click();
    await page
      .getByRole('dialog')
      .getByRole('button', { name: /^Willow/ })
      .click();
    await expect.poll(run).toEqual(ofWillow);

    await openScreen(page, 'class', panel(page, 'Whole class'));
    await page.getByRole('button', { name: 'Rename or remove Willow' }).click();
    await page.getByRole('button', { name: 'Remove the group' }).click();
    await members(page, 'Whole class').toEqual(['Odalys', 'Tam', 'Tam', 'Wren']);
    await page.getByRole('button', { name: 'Undo' }).click();
    await members(page, 'Willow').toEqual(['Odalys', 'Wren']);
    expect(browser.errors).toEqual([]);
  });

  it('is the same in two windows, and a child’s name is written otherwise in both', async () => {
    const page = await atRoom4();
    const other = await openAt(page.url());
    await move(page, 'Odalys', 'Willow');
    await members(other, 'Willow').toEqual(['Odalys']);
    await other.getByRole('button', { name: 'Odalys', exact: true }).click();
    await other.getByLabel('First name, nickname or initials').fill('Oda');
    await other.keyboard.press('Enter');
    await members(page, 'Willow').toEqual(['Oda']);
    await page.getByRole('button', { name: 'Oda', exact: true }).click();
    await page.getByRole('button', { name: 'Take out of the class' }).click();
    await members(other, 'Willow').toEqual([]);
    await page.getByRole('button', { name: 'Undo' }).click();
    await members(other, 'Willow').toEqual(['Oda']);
  });

  it('is one of several, put away and taken out again, and deleted only after a word', async () => {
    const page = await atRoom4();
    const heading = () => page.getByRole('heading', { level: 1 }).textContent();
    await page.getByLabel('Add another class').fill('Room 5');
    await page.keyboard.press('Enter');
    await expect.poll(heading).toBe('Room 5');
    await page.getByRole('button', { name: 'Open Room 4' }).click();
    await expect.poll(heading).toBe('Room 4');
    await page.getByRole('button', { name: 'Archive Room 5' }).click();
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByRole('button', { name: 'Archive Room 4' }).click();
    await expect.poll(heading).toBe('Room 5');
    await page.getByText('Archive (1)').click();
    await page.getByRole('button', { name: 'Delete Room 4 for good' }).click();
    const copy = await saved(page, () =>
      page.getByRole('button', { name: 'Save a copy first' }).click(),
    );
    const really = page.getByRole('button', { name: 'Delete for good', exact: true });
    expect(await really.isDisabled()).toBe(true);
    await page.getByLabel('To delete it, type “delete”').fill('Delete');
    await really.click();
    await page.getByText('Archive (1)').waitFor({ state: 'detached' });
    await page.reload();
    await expect.poll(heading).toBe('Room 5');
    expect(await page.getByText('Room 4').count()).toBe(0);

    await bring(page, copy.text);
    await page.getByRole('button', { name: 'Bring the deleted class back' }).click();
    await brought(page).getByText('Room 4').waitFor();
    await page.getByText('Archive (1)').click();
    await page.getByRole('button', { name: 'Take Room 4 out again' }).click();
    await expect.poll(heading).toBe('Room 4');
    await members(page, 'No group').toEqual(['Odalys', 'Tam', 'Tam', 'Wren']);
  });

  it('passes the accessibility checks that a machine can make in every look, and fits phones', async () => {
    const page = await atRoom4();
    await page.getByLabel('Lock it with a passphrase').check();
    await page.getByRole('button', { name: 'Wren', exact: true }).click();
    for (const look of ['dark', 'contrast', 'paper']) {
      await page.evaluate((name) => {
        document.documentElement.dataset.look = name;
      }, look);
      expect(await barriersIn(page), look).toEqual([]);
    }
    await page.keyboard.press('Escape');
    for (const width of [320, 390]) await fitsAcross(page, width, 700);
    const menu = page.getByRole('button', { name: 'Menu' });
    await menu.focus();
    await page.keyboard.press('Enter');
    expect(await barriersIn(page), 'with the menu open').toEqual([]);
    await page.keyboard.press('Tab');
    await page.keyboard.press('Escape');
    expect(await menu.getAttribute('aria-expanded')).toBe('false');
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Menu');
  });
});

describe('a copy of the class', () => {
  it('gives the same class elsewhere, a second time nothing, and keeps aside what is damaged', async () => {
    const first = await atRoom4();
    await move(first, 'Wren', 'Willow');
    const copy = await saveCopy(first);
    expect(copy.name).toMatch(/^sweepline-copy-\d{4}-\d\d-\d\d\.jsonl$/);
    const lines = copy.text.trimEnd().split('\n');

    const page = await arrive();
    await bring(page, copy.text);
    await brought(page)
      .getByText(`${lines.length - 2} entries were new.`)
      .waitFor();
    await expect.poll(() => page.getByRole('heading', { level: 1 }).textContent()).toBe('Room 4');
    await members(page, 'Willow').toEqual(['Wren']);
    await members(page, 'No group').toEqual(['Odalys', 'Tam', 'Tam']);
    await bring(page, copy.text);
    await brought(page).getByText('Nothing in it was new.').waitFor();
    expect((await saveCopy(page)).text).toBe(copy.text);

    const broken = (lines[2] as string).slice(0, 25);
    await bring(page, [...lines.slice(0, 2), broken, ...lines.slice(3)].join('\n'));
    await page.getByText('One line of the file could not be read.').waitFor();
    await page.getByText('Line 3').waitFor();
    const aside = await saved(page, () =>
      page.getByRole('button', { name: 'Save this line as a file' }).click(),
    );
    expect(aside.text).toBe(`${broken}\n`);
    await bring(page, 'Tam, Wren');
    await page.getByText('This is not a file of class records.').waitFor();
  });

  it('can be locked: only its passphrase opens it', async () => {
    const first = await atRoom4();
    await first.getByLabel('Lock it with a passphrase').check();
    const save = saveCopyButton(first);
    await first.getByLabel('Passphrase', { exact: true }).fill('moss and fern');
    await first.getByLabel('The same again').fill('moss and');
    await first.getByText('The two are not the same yet.').waitFor();
    expect(await save.isDisabled()).toBe(true);
    await first.getByLabel('The same again').fill('moss and fern');
    await first.getByLabel('Put the class’s name in the file’s name').check();
    const copy = await saveCopy(first);
    expect(copy.name).toMatch(/^sweepline-room-4-.*-locked\.jsonl$/);
    expect(copy.text).not.toContain('Odalys');

    const page = await arrive();
    await bring(page, copy.text);
    const passphrase = page.getByLabel('The file’s passphrase');
    await passphrase.fill('fern');
    await page.keyboard.press('Enter');
    await page.getByText('This passphrase does not open the file.').waitFor();
    await passphrase.fill('moss and fern');
    await page.keyboard.press('Enter');
    await brought(page).getByText('entries were new').waitFor();
    await members(page, 'No group').toEqual(['Odalys', 'Tam', 'Tam', 'Wren']);
  });
});

describe('when this browser keeps nothing', () => {
  it('says so and goes on, and a copy brings the class back once it keeps things', async () => {
    const page = await arrive();
    const refusing = await openAt(page.url(), () => {
      const { open } = IDBFactory.prototype;
      Object.assign(globalThis, { allow: () => Object.assign(IDBFactory.prototype, { open }) });
      IDBFactory.prototype.open = () => {
        throw new DOMException('refused', 'SecurityError');
      };
    });
    await refusing.getByText('This browser lets Sweepline keep nothing').waitFor();
    await refusing.getByLabel('Add children').fill('Bram, Tova');
    await refusing.keyboard.press('Enter');
    await members(refusing, 'Whole class').toEqual(['Bram', 'Tova']);
    await openScreen(
      refusing,
      'learned',
      refusing.getByRole('button', { name: /^Taught up to step 1,/ }),
    );
    await refusing.getByRole('slider', { name: 'Taught up to here' }).focus();
    for (let stages = 0; stages < 3; stages++) await refusing.keyboard.press('PageDown');
    await openScreen(refusing, 'today', flips(refusing));
    await openScreen(refusing, 'stage', stageCards(refusing));
    await openScreen(refusing, 'class', panel(refusing, 'Whole class'));
    const copy = await saved(refusing, () =>
      copyOffered(refusing).getByRole('button', { name: 'Save a copy' }).click(),
    );
    expect(copy.text).toContain('Tova');

    const again = refusing.getByRole('button', { name: 'Try again' });
    await again.click();
    await refusing.getByText('Still not saving.').waitFor();
    await refusing.evaluate(() => (globalThis as unknown as { allow: () => void }).allow());
    await again.click();
    await copyOffered(refusing).waitFor({ state: 'detached' });
    await refusing.reload();
    await refusing.getByText('This browser lets Sweepline keep nothing').waitFor();
    await page.reload();
    await members(page, 'Whole class').toEqual(['Bram', 'Tova']);
    await bring(page, copy.text);
    await brought(page).getByText('Nothing in it was new.').waitFor();
  });
});
