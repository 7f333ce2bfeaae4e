import { readdirSync } from 'node:fs';
import { afterEach, describe, expect, it } from 'vitest';
import { fromRoot } from '../../house/root.mjs';
import { type Visit, visit } from './visit.ts';

/** All that was built, but for the brotli copies, the worker itself, and the build's own stamp. */
const builtFiles = readdirSync(fromRoot('dist'), { recursive: true, encoding: 'utf8' }).filter(
  (path) => /\.\w+$/.test(path) && !/\.br$|^sw\.js$|^workbox-.*\.js$|^made-from\.txt$/.test(path),
);

let current: Visit | undefined;

afterEach(async () => {
  await current?.end();
  current = undefined;
});

async function arrive(): Promise<Visit> {
  current = await visit({ keepsApp: true });
  await current.page.waitForFunction(() => document.body.textContent.trim() !== '');
  return current;
}

/** Waits until the service worker holds everything and answers for the page. */
function putAside({ page }: Visit): Promise<unknown> {
  return page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller) return;
    await new Promise((resolve) =>
      navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true }),
    );
  });
}

describe('without a network', () => {
  it('opens as before when the server is gone after one visit', async () => {
    const visited = await arrive();
    const { page, stopServer, url } = visited;
    await putAside(visited);
    const before = await page.evaluate(() => document.body.textContent);
    await stopServer();
    await expect(fetch(url)).rejects.toThrow();

    await page.reload({ waitUntil: 'load' });
    await page.waitForFunction((text) => document.body.textContent === text, before);
    expect(await page.evaluate(() => document.fonts.check('16px Andika'))).toBe(true);
  });

  it('opens from any address below its own, at the screen that the address names', async () => {
    const visited = await arrive();
    const { page, stopServer, url } = visited;
    await putAside(visited);
    await stopServer();
    for (const path of ['#/class', '?from=mail#/class', 'index.html#/class', 'a/b/c?d=e#/class']) {
      await page.goto('about:blank');
      await page.goto(new URL(path, url).href, { waitUntil: 'load' });
      await page.getByRole('heading', { name: 'Keep it safe' }).waitFor();
    }
  });

  it.each([
    ['all', () => true],
    ['one file in three', (_: string, place: number) => place % 3 === 0],
    ['the word list', (address: string) => /words.*\.bin/.test(address)],
    ['the list of what is put aside', (address: string) => address.includes('put-aside')],
  ])(
    'is ready again after one more visit when of what was put aside there is gone: %s',
    async (_, isGone) => {
      const visited = await arrive();
      const { page, stopServer } = visited;
      await putAside(visited);
      const held = () =>
        page.evaluate(async () => {
          const caught = (await caches.keys()).map(async (name) =>
            (await caches.open(name)).keys(),
          );
          return (await Promise.all(caught)).flat().map(({ url }) => url);
        });
      const all = (await held()).sort();
      expect(all.length).toBeGreaterThan(30);
      const gone = all.filter(isGone);
      expect(gone).not.toEqual([]);
      for (let time = 0; time < 2; time += 1) {
        // Counted as they go: a worker that is still at it may put one back at once.
        const deleted = await page.evaluate(async (addresses) => {
          let count = 0;
          for (const name of await caches.keys()) {
            const cache = await caches.open(name);
            for (const address of addresses) if (await cache.delete(address)) count += 1;
          }
          return count;
        }, gone);
        expect(deleted).toBeGreaterThanOrEqual(gone.length);
        await page.reload({ waitUntil: 'load' });
        await expect.poll(async () => (await held()).sort(), { timeout: 10_000 }).toEqual(all);
      }
      await stopServer();
      await page.reload({ waitUntil: 'load' });
      await page.waitForFunction(() => document.body.textContent.trim() !== '');
    },
  );

  it('has every built file at hand, the word list included', async () => {
    const visited = await arrive();
    const { page, stopServer } = visited;
    await putAside(visited);
    await stopServer();
    const missing = await page.evaluate(async (paths) => {
      const answers = paths.map(async (path) => ({ path, ok: (await fetch(path)).ok }));
      return (await Promise.all(answers)).filter(({ ok }) => !ok).map(({ path }) => path);
    }, builtFiles);
    expect(missing).toEqual([]);
    for (const kind of [
      /\.html$/,
      /\.js$/,
      /\.css$/,
      /andika.*\.woff2$/,
      /words.*\.bin$/,
      /meanings/,
    ]) {
      expect(
        builtFiles.some((path) => kind.test(path)),
        `a file like ${kind}`,
      ).toBe(true);
    }
  });
});

describe('the strict policy', () => {
  it('is kept by the app itself: nothing is refused and nothing goes wrong on arrival', async () => {
    const visited = await arrive();
    await putAside(visited);
    expect(visited.errors).toEqual([]);
  });

  it('lets no request go to any other origin', async () => {
    const visited = await arrive();
    await putAside(visited);
    const { origin } = new URL(visited.url);
    const origins = new Set(visited.requests.map((address) => new URL(address).origin));
    expect(origins).toEqual(new Set([origin]));
  });

  it('refuses inline scripts, and pictures and data from elsewhere', async () => {
    const { page } = await arrive();
    const refused = await page.evaluate(async () => {
      const broken: string[] = [];
      document.addEventListener('securitypolicyviolation', ({ effectiveDirective }) =>
        broken.push(effectiveDirective),
      );
      const script = document.createElement('script');
      script.textContent = 'document.title = "taken over"';
      document.head.append(script);
      const picture = document.createElement('img');
      picture.src = 'https://example.org/x.png';
      document.body.append(picture);
      await fetch('https://example.org/').catch(() => {});
      await new Promise((resolve) => setTimeout(resolve, 100));
      return { broken, title: document.title };
    });
    expect(refused.title).not.toBe('taken over');
    expect(refused.broken).toEqual(
      expect.arrayContaining(['script-src-elem', 'img-src', 'connect-src']),
    );
  });

  it('stands in the page too, for the day it is served by another server', async () => {
    const { page } = await arrive();
    const policy = await page
      .locator('meta[http-equiv="Content-Security-Policy"]')
      .getAttribute('content');
    expect(policy).toContain("script-src 'self';");
  });
});
