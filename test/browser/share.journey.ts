import type { Page } from 'playwright-core';
import { afterEach, describe, expect, it } from 'vitest';
import { makeSchoolKey } from '../../school/key-file.ts';
import { fingerprintOf } from '../../web/device/far/school-key.ts';
import { comeIn, makeCode, share, typedCode, whereabouts } from './share-page.ts';
import { type SharedSite, serveShared } from './shared-site.ts';
import { visit } from './visit.ts';

let site: SharedSite | undefined;

afterEach(async () => {
  await site?.end();
  site = undefined;
});

const child = 'Quillon';

describe('a class on several devices', () => {
  it('is on the other one in seconds, and what is entered on either is on both', async () => {
    site = await serveShared();
    const laptop = await site.device({ upTo: 12 });
    await share(site, laptop, child);
    const phone = await site.device({ width: 390, height: 844 });
    await comeIn(phone, await makeCode(laptop, 'Everything', 'My phone'));
    await laptop.page.getByText('My phone has come in.').waitFor();
    await phone.page.goto(`${site.url}#/class`);
    await phone.page.getByRole('button', { name: child }).waitFor();
    await phone.page.getByLabel('Add children').fill('Tamsin');
    await phone.page.keyboard.press('Enter');
    await laptop.page.goto(`${site.url}#/class`);
    await laptop.page.getByRole('button', { name: 'Tamsin' }).waitFor();
    await whereabouts(phone.page, 'With your other devices').waitFor();
    expect([...laptop.errors, ...phone.errors]).toEqual([]);
    const bytes = site.bytes().toString('latin1');
    expect(bytes).toContain('found');
    for (const word of [child, 'Tamsin', 'My phone', 'Laptop']) expect(bytes).not.toContain(word);
  });

  it('goes on while the network is gone, says so quietly, and catches up by itself', async () => {
    site = await serveShared();
    const laptop = await site.device({ upTo: 12 });
    await share(site, laptop, child);
    const phone = await site.device();
    await comeIn(phone, await makeCode(laptop, 'Everything'));
    await phone.page.goto(`${site.url}#/class`);
    await phone.page.getByRole('button', { name: child }).waitFor();
    await site.stopServer();
    await phone.page.getByLabel('Add children').fill('Tamsin');
    await phone.page.keyboard.press('Enter');
    await whereabouts(phone.page, 'On this device').waitFor();
    expect(await phone.page.getByRole('dialog').count()).toBe(0);
    await site.startServer();
    await whereabouts(phone.page, 'With your other devices').waitFor();
    await laptop.page.goto(`${site.url}#/class`);
    await laptop.page.getByRole('button', { name: 'Tamsin' }).waitFor();
  });

  it('is brought up to date while another class is open', async () => {
    site = await serveShared();
    const laptop = await site.device({ upTo: 12 });
    await share(site, laptop, child);
    const phone = await site.device();
    const { page } = phone;
    await comeIn(phone, await makeCode(laptop, 'Everything'));
    await page.goto(`${site.url}#/class`);
    await page.getByRole('button', { name: child }).waitFor();
    await site.stopServer();
    await page.getByLabel('Add children').fill('Tamsin');
    await page.keyboard.press('Enter');
    await whereabouts(page, 'On this device').waitFor();
    await page.getByLabel('Add another class').fill('Room 5');
    await page.keyboard.press('Enter');
    await page.getByText('open now').waitFor();
    await site.startServer();
    await page.clock.install();
    await page.reload();
    await page.getByRole('heading', { name: 'Classes on this device' }).waitFor();
    await page.clock.fastForward(15_000);
    await laptop.page.goto(`${site.url}#/class`);
    await laptop.page.getByRole('button', { name: 'Tamsin' }).waitFor();
  });

  it('is closed to a device that was removed, which clears itself', async () => {
    site = await serveShared();
    const laptop = await site.device({ upTo: 12 });
    await share(site, laptop, child);
    const tablet = await site.device();
    await comeIn(tablet, await makeCode(laptop, 'Desk, without notes', 'Aide’s tablet'));
    await laptop.page.getByRole('button', { name: 'Remove Aide’s tablet' }).click();
    await laptop.page.getByRole('button', { name: 'Remove Aide’s tablet' }).last().click();
    await tablet.page.getByText('has left this device').waitFor();
    await tablet.page.goto(`${site.url}#/class`);
    expect(await tablet.page.getByRole('button', { name: child }).count()).toBe(0);
    expect(await laptop.page.getByRole('button', { name: /^Remove / }).count()).toBe(0);
  });

  it('asks its owner whether the school may open it, and shows all that it can', async () => {
    const { key } = await makeSchoolKey();
    site = await serveShared(key);
    const laptop = await site.device({ upTo: 12 });
    await share(site, laptop, child);
    await laptop.page.getByText(await fingerprintOf(key)).waitFor();
    await laptop.page.getByRole('button', { name: 'Let my school open it' }).click();
    const canOpen = (page: Page) => page.getByRole('heading', { name: 'Your school can open' });
    await canOpen(laptop.page).waitFor();
    const phone = await site.device();
    await comeIn(phone, await makeCode(laptop, 'Desk, without notes'));
    await phone.page.goto(`${site.url}#/share`);
    await canOpen(phone.page).waitFor();
    await phone.page.getByText(await fingerprintOf(key)).waitFor();
    await laptop.page.getByRole('button', { name: 'Take the school’s key back' }).click();
    await canOpen(phone.page).waitFor({ state: 'detached' });
    expect([...laptop.errors, ...phone.errors]).toEqual([]);
  });

  it('does all of it where no WebSocket gets through', async () => {
    site = await serveShared();
    const laptop = await site.device({ upTo: 12, noSockets: true });
    await share(site, laptop, child);
    const phone = await site.device({ noSockets: true });
    await comeIn(phone, await makeCode(laptop, 'Teaches too'));
    await phone.page.goto(`${site.url}#/class`);
    await phone.page.getByRole('button', { name: child }).waitFor();
    await phone.page.getByLabel('Add children').fill('Tamsin');
    await phone.page.keyboard.press('Enter');
    await laptop.page.goto(`${site.url}#/class`);
    await laptop.page.getByRole('button', { name: 'Tamsin' }).waitFor();
    expect(laptop.requests.some((url) => url.endsWith('/v1/send'))).toBe(true);
  });

  it('lets a device in by a code that is typed, and by one that the new device shows', async () => {
    site = await serveShared();
    const laptop = await site.device({ upTo: 12 });
    await share(site, laptop, child);
    await makeCode(laptop, 'Reads along');
    const code = (await typedCode(laptop.page).textContent()) ?? '';
    const phone = await site.device({ path: '#/join' });
    await phone.page.getByLabel('The code').fill(code.toLowerCase().replaceAll('-', ' '));
    await phone.page.getByRole('button', { name: 'Come in' }).click();
    await phone.page.getByRole('heading', { name: /^You are in / }).waitFor();
    await laptop.page.getByText('A specialist has come in.').waitFor();

    const screen = await site.device({ path: '#/join' });
    await screen.page.getByRole('button', { name: 'Show a code on this screen' }).click();
    const shown = (await typedCode(screen.page).textContent()) ?? '';
    await laptop.page.getByRole('radio', { name: 'Teaches too' }).check();
    await laptop.page.getByLabel('Or type the code that the other device shows').fill(shown);
    await laptop.page.getByRole('button', { name: 'Let it in' }).click();
    await screen.page.getByRole('heading', { name: /^You are in / }).waitFor();
    await phone.page.goto(`${site.url}#/share`);
    await phone.page.getByText('Teaches too').waitFor();
    expect(await phone.page.getByRole('button', { name: 'Show the code' }).count()).toBe(0);
  });

  it('opens from a printed sheet when every device is lost, unless the sheet was taken back', async () => {
    site = await serveShared();
    const laptop = await site.device({ upTo: 12 });
    await share(site, laptop, child);
    const makeSheet = async () => {
      await laptop.page.getByRole('button', { name: 'Make a recovery sheet' }).click();
      const letters = (await typedCode(laptop.page).textContent()) ?? '';
      await laptop.page.getByRole('button', { name: 'Done' }).click();
      return letters;
    };
    const lost = await makeSheet();
    await laptop.page.getByRole('button', { name: 'Take it back' }).click();
    await laptop.page.getByText('opens nothing any more').waitFor();
    const letters = await makeSheet();
    await laptop.context.close();
    const fresh = await site.device({ path: '#/join' });
    const type = async (text: string) => {
      await fresh.page.getByLabel('The code').fill(text);
      await fresh.page.getByRole('button', { name: 'Come in' }).click();
    };
    await type(lost);
    await fresh.page.getByText('That code was used already').waitFor();
    await type(letters);
    await fresh.page.getByRole('heading', { name: /^You are in / }).waitFor();
    await fresh.page.goto(`${site.url}#/class`);
    await fresh.page.getByRole('button', { name: child }).waitFor();
    await fresh.page.goto(`${site.url}#/share`);
    await fresh.page.getByRole('button', { name: 'Show the code' }).waitFor();
  });

  it('deletes all about a child for good, on every device', async () => {
    site = await serveShared();
    const laptop = await site.device({ upTo: 12 });
    await share(site, laptop, child);
    const phone = await site.device();
    await comeIn(phone, await makeCode(laptop, 'Teaches too'));
    await phone.page.goto(`${site.url}#/class`);
    await phone.page.getByRole('button', { name: child }).click();
    await phone.page.getByRole('button', { name: 'Take out of the class' }).click();
    expect(await phone.page.getByText('Delete everything about').count()).toBe(0);
    await laptop.page.goto(`${site.url}#/class`);
    await laptop.page.getByText('Taken out of the class: one child').click();
    await laptop.page.getByRole('button', { name: `Delete everything about ${child}` }).click();
    await laptop.page.getByRole('button', { name: `Delete ${child} for good` }).click();
    for (const { page } of [laptop, phone]) {
      await page.getByText('Taken out of the class').waitFor({ state: 'detached' });
      await page.waitForFunction(holdsNowhere, child);
    }
  });

  it('lets nobody in twice by one code, nor by a code taken back', async () => {
    site = await serveShared();
    const laptop = await site.device({ upTo: 12 });
    await share(site, laptop, child);
    const address = await makeCode(laptop, 'Everything');
    await comeIn(await site.device(), address);
    const other = await site.device({ path: new URL(address).hash });
    await other.page.getByText('That code was used already').waitFor();
  });
});

/** Whether neither the database of this browser nor the second copy has a word; it runs in the page. */
async function holdsNowhere(word: string): Promise<boolean> {
  const open = indexedDB.open('sweepline-log');
  const db = await new Promise<IDBDatabase>((resolve) => {
    open.onsuccess = () => resolve(open.result);
  });
  const texts: string[] = [];
  for (const store of db.objectStoreNames) {
    const asked = db.transaction(store).objectStore(store).getAll();
    await new Promise((resolve) => {
      asked.onsuccess = resolve;
    });
    texts.push(JSON.stringify(asked.result));
  }
  db.close();
  const root = await navigator.storage.getDirectory();
  const folder = await root.getDirectoryHandle('sweepline-second-copy', { create: true });
  for await (const file of folder.values()) {
    if (file instanceof FileSystemFileHandle) texts.push(await (await file.getFile()).text());
  }
  texts.push(JSON.stringify(localStorage));
  return texts.length > 3 && !texts.some((text) => text.includes(word));
}

describe('a class that is not shared', () => {
  it('asks no server for anything, whatever screen is looked at', async () => {
    const alone = await visit({ upTo: 12 });
    for (const path of ['#/class', '#/share', '#/join', '#/today']) {
      await alone.page.goto(new URL(path, alone.url).href);
      await alone.page.getByRole('heading', { level: 1 }).first().waitFor();
    }
    expect(alone.requests.filter((url) => /\/v1\b|healthz/.test(url))).toEqual([]);
    expect(await whereabouts(alone.page, /device|On its way/).count()).toBe(0);
    await alone.end();
  });
});
