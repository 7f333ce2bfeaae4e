import type { Locator, Page } from 'playwright-core';
import { afterEach, describe, expect, it } from 'vitest';
import { children } from './class-page.ts';
import { holdLongWaits } from './clock.ts';
import { allKept } from './recorded.ts';
import { openScreen } from './standing.ts';
import { type Visit, visit } from './visit.ts';

/**
 * What is kept on the device does not answer: another window holds the whole database in a change that does
 * not end, as a window that hangs would.
 */
let current: Visit | undefined;

afterEach(async () => {
  await current?.end();
  current = undefined;
});

/** A class with Mia in it, and a window beside it that can hold what is kept. */
async function arrive(): Promise<{ readonly page: Page; readonly holder: Page }> {
  current = await visit({ path: '#/class', upTo: 30 });
  const { page, url } = current;
  await addChild(page, 'Mia');
  await allKept(page);
  await holdLongWaits(page);
  const holder = await page.context().newPage();
  await holder.goto(new URL('icon.svg', url).href);
  return { page, holder };
}

async function addChild(page: Page, name: string): Promise<void> {
  await page.getByLabel('Add children').fill(name);
  await page.keyboard.press('Enter');
  await children(page).getByText(name).waitFor();
}

/** Holds the database in one change that goes on and on, until it is let go. */
async function hold(page: Page): Promise<void> {
  await page.evaluate(
    () =>
      new Promise<void>((held) => {
        const opening = indexedDB.open('sweepline-log');
        opening.onsuccess = () => {
          const db = opening.result;
          const tx = db.transaction([...db.objectStoreNames], 'readwrite');
          const isHeld = globalThis as { isHeld?: boolean };
          isHeld.isHeld = true;
          const goOn = () => {
            held();
            if (isHeld.isHeld) tx.objectStore('aside').count().onsuccess = goOn;
            else db.close();
          };
          goOn();
        };
      }),
  );
}

function letGo(page: Page): Promise<void> {
  return page.evaluate(() => {
    (globalThis as { isHeld?: boolean }).isHeld = false;
  });
}

/** Waits for something that is shown when the app has waited long enough, on a clock that runs on its own. */
async function afterLongWaits(page: Page, shown: Locator): Promise<void> {
  await expect
    .poll(async () => {
      await page.evaluate(() => endWaits());
      return shown.isVisible();
    })
    .toBe(true);
}

const heading = (page: Page, name: string) => page.getByRole('heading', { name });
const again = (page: Page) => page.getByRole('button', { name: 'Try again' });
const without = (page: Page) => page.getByRole('button', { name: 'Start without them' });

describe('when what is kept does not answer', () => {
  it('she is told after a moment, tries again, and has her class once it answers', async () => {
    const { page, holder } = await arrive();
    await hold(holder);
    await page.reload();
    await heading(page, 'Opening your classes').waitFor();
    await afterLongWaits(page, heading(page, 'Your classes cannot be reached yet'));
    await again(page).click();
    await heading(page, 'Opening your classes').waitFor();
    await afterLongWaits(page, heading(page, 'Your classes cannot be reached yet'));
    await letGo(holder);
    await again(page).click();
    await children(page).getByText('Mia').waitFor();
  });

  it('she starts without her classes, and what she does joins them once they answer', async () => {
    const { page, holder } = await arrive();
    await hold(holder);
    await page.reload();
    await afterLongWaits(page, without(page));
    await without(page).click();
    await openScreen(page, 'class', heading(page, 'Keep it safe'));
    expect(await children(page).count()).toBe(0);
    await addChild(page, 'Noa');
    await letGo(holder);
    await again(page).click();
    await children(page).getByText('Mia').waitFor();
    await children(page).getByText('Noa').waitFor();
    expect(await again(page).count()).toBe(0);
  });

  it('what she does without them also joins them when she closes the window first', async () => {
    const { page, holder } = await arrive();
    await hold(holder);
    await page.reload();
    await afterLongWaits(page, without(page));
    await without(page).click();
    await openScreen(page, 'class', heading(page, 'Keep it safe'));
    await addChild(page, 'Noa');
    await page.goto('about:blank');
    await letGo(holder);
    await page.goto(new URL('#/class', current?.url).href);
    await children(page).getByText('Mia').waitFor();
    await children(page).getByText('Noa').waitFor();
  });
});
