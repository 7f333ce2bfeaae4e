import { readFileSync, writeFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { build, type PreviewServer, preview } from 'vite';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { fromRoot } from '../../house/root.mjs';
import { type Visit, visit } from './visit.ts';

/**
 * The gallery is held against what was seen and approved: for each exhibit its words, and where its boxes
 * stand to the nearest 8 px, so that another Chromium with the same letters sees the same. A golden guards
 * against change and proves nothing: look at `npm run gallery` before `GOLDEN=new` writes it again.
 */
const GOLDEN = fromRoot('test/goldens/gallery.json');

let server: PreviewServer;
let current: Visit;

beforeAll(async () => {
  const configFile = fromRoot('test/gallery/vite.config.ts');
  await build({ configFile, logLevel: 'error' });
  server = await preview({ configFile, logLevel: 'error', preview: { port: 0 } });
  current = await visit({ path: 'icon.svg' });
  await current.page.goto(server.resolvedUrls?.local[0] ?? '');
  await current.page.waitForSelector('html[data-ready]', { timeout: 120_000 });
});

afterAll(async () => {
  await current?.end();
  await server?.close();
});

it('looks as it was approved: every card, sign and sheet, and every empty and failed state', async () => {
  const seen = await exhibits(current.page);
  if (process.env.GOLDEN === 'new') writeFileSync(GOLDEN, inLines(seen));
  const approved: Awaited<ReturnType<typeof exhibits>> = JSON.parse(readFileSync(GOLDEN, 'utf8'));
  expect(Object.keys(seen)).toEqual(Object.keys(approved));
  for (const [name, exhibit] of Object.entries(approved)) {
    expect([name, seen[name]?.words]).toEqual([name, exhibit.words]);
    expect([name, seen[name]?.boxes.length]).toEqual([name, exhibit.boxes.length]);
    exhibit.boxes.forEach((box, at) => {
      const found = seen[name]?.boxes[at] ?? [];
      const off = Math.max(...box.map((side, which) => Math.abs(side - (found[which] ?? 1e9))));
      expect([name, at, off <= 8]).toEqual([name, at, true]);
    });
  }
});

it('shows a letter on every card, and no card cut off', async () => {
  const cut = await current.page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('.exhibit-cards li')].flatMap((item) => {
      const inner = item.querySelector<HTMLElement>('.card');
      const clipped = !inner || inner.scrollWidth > inner.clientWidth + 1;
      return clipped || item.textContent === '' ? [item.title] : [];
    }),
  );
  expect(cut).toEqual([]);
});

/** An exhibit to a line, so that a change shows where it is. */
function inLines(seen: object): string {
  const lines = Object.entries(seen).map(
    ([name, exhibit]) => `${JSON.stringify(name)}: ${JSON.stringify(exhibit)}`,
  );
  return `{\n${lines.join(',\n')}\n}\n`;
}

/** Each exhibit by name: its words, and left, top, width and height of its parts from its own corner. */
function exhibits(page: Page) {
  return page.evaluate(() =>
    Object.fromEntries(
      [...document.querySelectorAll<HTMLElement>('.exhibit')].map((exhibit) => {
        const corner = exhibit.getBoundingClientRect();
        const near = (length: number) => Math.round(length / 8) * 8;
        const boxes = [...exhibit.querySelectorAll('.card, .button, svg, h2, p')].map((part) => {
          const { left, top, width, height } = part.getBoundingClientRect();
          return [left - corner.left, top - corner.top, width, height].map(near);
        });
        const words = exhibit.textContent
          .replace(/\b(Mon|Tues|Wednes|Thurs|Fri|Satur|Sun)day/g, 'Someday')
          .replace(/\s+/g, ' ')
          .trim();
        return [exhibit.getAttribute('aria-label') ?? '', { words, boxes }];
      }),
    ),
  );
}
