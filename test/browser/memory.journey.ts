import { readFileSync } from 'node:fs';
import { afterEach, describe, expect, it } from 'vitest';
import { allKept, recorded } from './recorded.ts';
import { stageCards } from './stage-page.ts';
import { type Visit, visit } from './visit.ts';

let current: Visit | undefined;

afterEach(async () => {
  await current?.end();
  current = undefined;
});

describe('what this device remembers', () => {
  it('is put aside, not thrown away, when it cannot be read', async () => {
    current = await visit();
    const { page, url } = current;
    // Written where no app runs: an app still starting would find it, and tell, before the next load.
    await page.goto(new URL('icon.svg', url).href);
    await page.evaluate(() => localStorage.setItem('sweepline.standing', '{"upTo": "many"'));
    await page.goto(url, { waitUntil: 'load' });
    await page.getByText('could not be read').waitFor();
    expect(await page.evaluate(() => localStorage.getItem('sweepline.standing.unreadable-1'))).toBe(
      '{"upTo": "many"',
    );
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save the copy as a file' }).click(),
    ]);
    expect(download.suggestedFilename()).toBe('sweepline-set-aside.json');
    await page.reload({ waitUntil: 'load' });
    await page.getByText('could not be read').waitFor();
    await page.getByRole('button', { name: 'Close' }).click();
    await page.reload({ waitUntil: 'load' });
    await page.getByRole('heading', { level: 1 }).first().waitFor();
    expect(await page.getByText('could not be read').count()).toBe(0);
  });

  it('is set aside entry by entry where it is damaged: seen with its reason, saved, and thrown away', async () => {
    current = await visit({ path: '#/class', upTo: 3 });
    const { page, url } = current;
    await page.getByRole('heading', { name: 'Keep it safe' }).waitFor();
    await expect.poll(() => recorded(page)).not.toEqual([]);
    await allKept(page);
    await page.goto(new URL('icon.svg', url).href);
    await page.evaluate(
      () =>
        new Promise<void>((done, fail) => {
          const opening = indexedDB.open('sweepline-log');
          opening.onerror = () => fail(opening.error);
          opening.onsuccess = () => {
            const db = opening.result;
            const tx = db.transaction('loose', 'readwrite');
            const loose = tx.objectStore('loose');
            loose.getAll().onsuccess = ({ target }) => {
              const [first] = (target as IDBRequest).result;
              loose.put({ ...first, id: 'damaged', at: 'noon' });
            };
            tx.onabort = () => fail(tx.error);
            tx.oncomplete = () => {
              db.close();
              done();
            };
          };
        }),
    );
    await page.goto(new URL('#/class', url).href, { waitUntil: 'load' });
    const aside = page.getByRole('region', { name: 'Set aside' });
    await aside.getByText('One entry of a class could not be read').waitFor();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      aside.getByRole('button', { name: 'Save what was set aside' }).click(),
    ]);
    const [piece, ...more] = JSON.parse(readFileSync(await download.path(), 'utf8'));
    expect(more).toEqual([]);
    expect(piece.reason).toBe('entry');
    expect(JSON.parse(piece.text)).toMatchObject({ id: 'damaged', at: 'noon' });
    await aside.getByRole('button', { name: 'Throw it away' }).click();
    await aside.getByRole('button', { name: 'Throw it away for good' }).click();
    await aside.waitFor({ state: 'detached' });
    await page.reload({ waitUntil: 'load' });
    await page.getByRole('heading', { name: 'Keep it safe' }).waitFor();
    expect(await aside.count()).toBe(0);
  });

  it('holds what was done in the very moment in which the page was left', async () => {
    current = await visit({ path: '#/learned', upTo: 3 });
    const { page } = current;
    const line = page.getByRole('slider', { name: 'Taught up to here' });
    for (const leaving of ['one', 'two', 'three', 'four']) {
      await line.focus();
      const step = Number(await line.getAttribute('aria-valuenow'));
      await Promise.all([
        page.waitForURL(`**?${leaving}#/learned`),
        page.evaluate((query) => {
          const key = new KeyboardEvent('keydown', { key: 'ArrowDown', bubbles: true });
          document.activeElement?.dispatchEvent(key);
          location.replace(`?${query}#/learned`);
        }, leaving),
      ]);
      await line.waitFor();
      expect(Number(await line.getAttribute('aria-valuenow'))).toBe(step + 1);
    }
  });

  it('may be nothing at all: with storage refused the warm-up still runs, and says so', async () => {
    current = await visit();
    const { page } = current;
    await page.addInitScript(() => {
      Object.defineProperty(window, 'localStorage', {
        get() {
          throw new DOMException('refused', 'SecurityError');
        },
      });
    });
    await page.reload({ waitUntil: 'load' });
    await page.getByText('will not let Sweepline remember').waitFor();
    await page.getByRole('slider', { name: 'Taught up to here' }).focus();
    await page.keyboard.press('PageDown');
    await page.keyboard.press('PageDown');
    await page.getByRole('link', { name: 'Plan today’s warm-up' }).click();
    await page.getByRole('button', { name: 'Start on the stage' }).click();
    await stageCards(page).first().waitFor();
  });
});
