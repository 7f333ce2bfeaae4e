import { afterEach, describe, expect, it } from 'vitest';
import { type Exhibits, exhibitsOf, VERSIONS } from '../museum/exhibits.ts';
import { type Visit, visit } from './visit.ts';

let current: Visit | undefined;

afterEach(async () => {
  await current?.end();
  current = undefined;
});

describe.each(VERSIONS)('a browser in which version %s was at work', (version) => {
  it('shows the class as it was, in both copies or either, with nothing put aside', async () => {
    for (const kept of ['both', 'database', 'second copy'] as const) {
      current = await visit({ path: 'icon.svg' });
      const { page, url } = current;
      await layIn(exhibitsOf(version), kept);
      await page.goto(new URL('#/class', url).href, { waitUntil: 'load' });
      for (const name of ['Amaro', 'Bibi', 'Cosmo', 'Delphine-Rosalie', 'Ezra', 'Fenna']) {
        await page.getByText(name).first().waitFor();
      }
      await page.getByRole('button', { name: /At work: Room 9/ }).waitFor();
      expect(await page.getByText('could not be read').count()).toBe(0);
      await current.end();
    }
  });

  it('opens every screen with what lay on the shelf: her look, her board, her text', async () => {
    current = await visit({ path: 'icon.svg' });
    const { page, url, errors } = current;
    await layIn(exhibitsOf(version), 'both');
    await page.goto(new URL('#/text', url).href, { waitUntil: 'load' });
    await expectText('The small ship sat in the mud. A cat did nap.');
    for (const link of exhibitsOf(version).links) {
      await page.goto(new URL(link, url).href);
      await page.getByRole('button').first().waitFor();
    }
    await page.goto(new URL('#/board', url).href);
    await page.getByRole('button', { name: /Your boards/ }).click();
    await page.getByRole('button', { name: 'Open Short vowels' }).waitFor();
    expect(await page.getByText('could not be read').count()).toBe(0);
    // The picture on which all was laid has no icon of its own; the browser asks for it once, sooner or later.
    const missing = errors.filter((error) => error.includes('404 (Not Found)'));
    expect(missing.length).toBeLessThanOrEqual(1);
    expect(errors.filter((error) => !missing.includes(error))).toEqual([]);
  });
});

async function expectText(text: string): Promise<void> {
  const fields = current?.page.getByRole('textbox');
  const texts = () =>
    fields?.evaluateAll((all) => (all as HTMLTextAreaElement[]).map(({ value }) => value));
  await expect.poll(texts).toContain(text);
}

/** Lays what a version stored where it stored it, on a page on which no app runs. */
async function layIn(
  { database, secondCopy, shelf }: Exhibits,
  kept: 'both' | 'database' | 'second copy',
): Promise<void> {
  await current?.page.evaluate(
    async (all) => {
      for (const [name, text] of Object.entries(all.shelf)) localStorage.setItem(name, text);
      if (all.kept !== 'second copy') {
        const opening = indexedDB.open('sweepline-log', 1);
        opening.onupgradeneeded = () => {
          opening.result.createObjectStore('loose', { keyPath: ['classId', 'id'] });
          opening.result.createObjectStore('pages', { keyPath: ['classId', 'page'] });
          opening.result.createObjectStore('heads', { keyPath: ['classId', 'id'] });
        };
        await new Promise((resolve, reject) => {
          opening.onsuccess = resolve;
          opening.onerror = reject;
        });
        const db = opening.result;
        const change = db.transaction(['loose', 'pages', 'heads'], 'readwrite');
        for (const name of ['loose', 'pages', 'heads'] as const) {
          for (const record of all.database[name]) change.objectStore(name).put(record);
        }
        await new Promise((resolve, reject) => {
          change.oncomplete = resolve;
          change.onerror = reject;
        });
        db.close();
      }
      if (all.kept !== 'database') {
        const root = await navigator.storage.getDirectory();
        const folder = await root.getDirectoryHandle('sweepline-second-copy', { create: true });
        for (const [name, text] of Object.entries(all.secondCopy)) {
          const file = await folder.getFileHandle(name, { create: true });
          const writing = await file.createWritable();
          await writing.write(text);
          await writing.close();
        }
      }
    },
    { database, secondCopy, shelf, kept },
  );
}
