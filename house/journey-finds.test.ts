import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { fromRoot } from './root.mjs';

/** Ways to find something by how the page is built, not by what a person sees or hears. */
const BY_CSS = /\.locator\(|querySelector(?:All)?\b|waitForSelector\(/g;

/**
 * What journeys and their page models still find by CSS, how often, and why it stays. What is drawn for eyes
 * alone has no name that would be heard; how something looks is measured on its box.
 */
const STILL: Readonly<Record<string, readonly [count: number, why: string]>> = {
  'after.journey': [1, 'that the card that broke is drawn as broken'],
  'board-page': [1, 'the card under the pointer, drawn beside the one that is heard'],
  'check-page': [2, 'what a child reads is bare text on its screen and on paper'],
  'desk-page': [1, 'the letters of a card without the note and the key on its button'],
  'gallery.journey': [5, 'the pictures of the gallery, each cut out by its box'],
  'known.journey': [1, 'the curve of growth, whose numbers are heard in a table'],
  looks: [1, 'the rows of a class map that axe is spared: all are drawn alike'],
  'offline.journey': [1, 'the policy in the head of the page'],
  'sight.journey': [1, 'that the part to learn by heart is drawn dotted'],
  'stage-page': [6, 'cards, sweep and ticks, in whose stead the name of the moment is heard'],
};

const folder = fromRoot('test/browser');
const counts = Object.fromEntries(
  readdirSync(folder)
    .filter((file) => file.endsWith('.ts'))
    .map((file) => {
      const text = readFileSync(`${folder}/${file}`, 'utf8');
      return [file.replace('.ts', ''), text.match(BY_CSS)?.length ?? 0] as const;
    })
    .filter(([, count]) => count > 0)
    .sort(([one], [other]) => (one < other ? -1 : 1)),
);

it('journeys find by role, label or text; by CSS only where a reason is given here', () => {
  const still = Object.entries(STILL).map(([file, [count]]) => [file, count]);
  expect(counts).toEqual(Object.fromEntries(still));
});
