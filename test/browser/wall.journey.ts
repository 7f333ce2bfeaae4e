import { afterEach, describe, expect, it } from 'vitest';
import { deskCount, keptMark } from './desk-page.ts';
import { makeCode, share, typedCode } from './share-page.ts';
import { type SharedSite, serveShared } from './shared-site.ts';
import { stageCards } from './stage-page.ts';

let site: SharedSite | undefined;

afterEach(async () => {
  await site?.end();
  site = undefined;
});

const child = 'Quillon';

describe('a classroom screen that is only a wall', () => {
  it('is let in by its own code, follows the desk without a name, and has forgotten it afterwards', async () => {
    site = await serveShared();
    const desk = await site.device({ upTo: 12 });
    await share(site, desk, child);
    const wall = await site.device({ width: 1920, height: 1080, path: '#/join' });
    await wall.page.getByRole('button', { name: 'Show a code on this screen' }).click();
    const shown = (await typedCode(wall.page).textContent()) ?? '';
    await desk.page.getByRole('radio', { name: 'Wall only' }).check();
    await desk.page.getByLabel('Or type the code that the other device shows').fill(shown);
    await desk.page.getByRole('button', { name: 'Let it in' }).click();
    await wall.page.getByText('as soon as your desk begins one').waitFor();
    await desk.page.getByRole('listitem').filter({ hasText: 'Wall only' }).first().waitFor();

    await desk.page.goto(`${site.url}#/desk`);
    const cards = stageCards(wall.page);
    await cards.first().waitFor();
    await desk.page.getByText('stage open').waitFor();
    const first = await cards.allTextContents();
    await desk.page.keyboard.press('Space');
    await expect.poll(() => cards.allTextContents()).not.toEqual(first);
    await wall.page.keyboard.press('Space');
    await expect.poll(() => deskCount(desk.page).textContent()).toMatch(/^3 of /);
    // A digit marks at a desk; a wall marks nothing.
    await wall.page.keyboard.press('1');
    await wall.page.keyboard.press('ArrowLeft');
    await expect.poll(() => deskCount(desk.page).textContent()).toMatch(/^2 of /);
    expect(await keptMark(desk.page).count()).toBe(0);

    expect(await wall.page.content()).not.toContain(child);
    const kept = await wall.page.evaluate(async () => {
      const databases = await indexedDB.databases();
      const stores: unknown[] = [];
      for (const { name = '' } of databases) {
        const db = await new Promise<IDBDatabase>((resolve, reject) => {
          const asked = indexedDB.open(name);
          asked.onsuccess = () => resolve(asked.result);
          asked.onerror = () => reject(asked.error);
        });
        for (const store of db.objectStoreNames) {
          const asked = db.transaction(store).objectStore(store).getAll();
          stores.push(
            await new Promise((resolve) => (asked.onsuccess = () => resolve(asked.result))),
          );
        }
        db.close();
      }
      return JSON.stringify([stores, { ...localStorage }]);
    });
    const word = await desk.page.evaluate(() => localStorage.getItem('sweepline.open') ?? '');
    const classId = /"classId":"([\w-]+)"/.exec(word)?.[1] ?? 'no class';
    expect(kept).not.toContain(classId);
    expect(kept).not.toContain(child);

    await wall.page.keyboard.press('Escape');
    await wall.page.getByText('this screen has forgotten it').waitFor();
    expect([...desk.errors, ...wall.errors]).toEqual([]);
  });

  it('opens from her code, and steps on by its own keys while the network is gone', async () => {
    site = await serveShared();
    const desk = await site.device({ upTo: 12 });
    await share(site, desk, child);
    const wall = await site.device({ width: 1920, height: 1080, noSockets: true });
    await wall.page.goto(await makeCode(desk, 'Wall only'));
    await wall.page.getByText('as soon as your desk begins one').waitFor();
    await desk.page.goto(`${site.url}#/desk`);
    const cards = stageCards(wall.page);
    await cards.first().waitFor();
    await desk.page.getByText('stage open').waitFor();
    const before = await cards.allTextContents();
    await site.stopServer();
    await wall.page.keyboard.press('Space');
    await expect.poll(() => cards.allTextContents()).not.toEqual(before);
    await wall.page.keyboard.press('Space');
    await site.startServer();
    await expect
      .poll(() => deskCount(desk.page).textContent(), { timeout: 60_000 })
      .toMatch(/^3 of /);
  });
});
