import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { fromRoot } from './root.mjs';

/** Ways to find something by how the page is built, not by what a person sees or hears. */
const BY_CSS = /\.locator\(|querySelector(?:All)?\b|waitForSelector\(|openScreen\(\w+, '[^']*', '/g;

/**
 * How often each journey still finds by CSS. Some have a reason and stay: what is drawn for eyes alone has no
 * name (`drawn`), and how something looks is measured on its box (`looks`). The others are old and only
 * become fewer: what is missing is a name that a screen reader wants too.
 */
const STILL: Readonly<Record<string, number>> = {
  after: 15,
  board: 23,
  check: 15,
  'class-words': 6,
  class: 3,
  'day-groups': 9,
  desk: 41, // drawn, in part
  'far-stage': 1,
  'first-visit': 6, // drawn, in part
  gallery: 5, // looks
  interruptions: 16,
  known: 3,
  memory: 1, // counts what is left of a page
  museum: 2, // drawn
  'nothing-lost': 4,
  offline: 2,
  order: 2,
  pages: 6,
  papers: 11,
  pins: 2,
  print: 5,
  readers: 5,
  'seven-days': 11,
  sheets: 1,
  share: 4,
  sight: 23, // drawn, in good part
  'small-desk': 20, // pixels
  stage: 14, // drawn
  today: 5,
  wall: 4,
};

const folder = fromRoot('test/browser');
const counts = Object.fromEntries(
  readdirSync(folder)
    .filter((file) => file.endsWith('.journey.ts'))
    .map((file) => {
      const text = readFileSync(`${folder}/${file}`, 'utf8');
      return [file.replace('.journey.ts', ''), text.match(BY_CSS)?.length ?? 0] as const;
    })
    .filter(([, count]) => count > 0)
    .sort(([one], [other]) => (one < other ? -1 : 1)),
);

it('journeys find by role, label or text: by CSS no more than before, and where it was mended the number says so', () => {
  expect(counts).toEqual(STILL);
});
