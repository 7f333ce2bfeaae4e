/**
 * The build step for pictures: takes those icons of the open set that stand for keywords, and our own
 * drawings, into one small file. Run it by hand when icons.ts or drawn.ts change:
 * `npx tsx house/build-pictures.ts`.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { makePictures } from '../print/pictures/make-pictures.ts';

const { resolve } = createRequire(import.meta.url);
const set = JSON.parse(readFileSync(resolve('@iconify-json/fluent-emoji-flat/icons.json'), 'utf8'));
const pictures = makePictures(set);
const lines = Object.entries(pictures).map(
  ([keyword, picture]) => `${JSON.stringify(keyword)}: ${JSON.stringify(picture)}`,
);
writeFileSync(
  new URL('../print/pictures/pictures.json', import.meta.url),
  `{\n${lines.join(',\n')}\n}\n`,
);
process.stdout.write(`${lines.length} pictures.\n`);
