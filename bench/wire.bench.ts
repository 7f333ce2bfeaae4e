import { existsSync, statSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { fromRoot } from '../house/root.mjs';
import { visit } from '../test/browser/visit.ts';
import { type Measurement, summary } from './measure.ts';

/**
 * How much a first visit brings over the wire, in KB (1000 bytes), headers left out: what the page
 * itself asks for until it is quiet, and all that is put aside so that it works without a network.
 */
export async function measurements(): Promise<readonly Measurement[]> {
  const { page, end } = await visit({ keepsApp: true });
  try {
    await page.waitForLoadState('networkidle');
    const asked = await askedFor(page);
    const kept = await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
      const stores = await Promise.all((await caches.keys()).map((name) => caches.open(name)));
      const held = await Promise.all(stores.map((store) => store.keys()));
      return held.flat().map(({ url }) => url);
    });
    return [
      summary({ name: 'first load', unit: 'KB', aim: 300, values: [kilobytes(asked)] }),
      summary({
        name: 'first load and all for offline',
        unit: 'KB',
        values: [kilobytes([...asked, ...kept])],
      }),
    ];
  } finally {
    await end();
  }
}

/** The addresses that a page has asked for so far, its own among them. */
export function askedFor(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => [
    location.href,
    ...performance.getEntriesByType('resource').map(({ name }) => name),
  ]);
}

/** What these addresses bring, in KB (1000 bytes): each counted once, as the brotli copy where there is one. */
export function kilobytes(addresses: readonly string[]): number {
  const paths = new Set(addresses.map((address) => new URL(address).pathname));
  const sizes = [...paths].map((path) => {
    const file = fromRoot('dist', path.endsWith('/') ? `${path}index.html` : path);
    return statSync(existsSync(`${file}.br`) ? `${file}.br` : file).size;
  });
  return sizes.reduce((sum, size) => sum + size, 0) / 1000;
}
