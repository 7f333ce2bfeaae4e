import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, it } from 'vitest';
import { makePdf } from '../../print/document.ts';
import type { Page, ShapeMark } from '../../print/page.ts';
import { INCH } from '../../print/paper.ts';
import { type Picture, pictureMarks } from '../../print/picture.ts';
import { openTypeface } from '../../print/typeface.ts';
import { ANDIKA } from '../../print/typeface-files.ts';
import { type Raster, renderPdf } from '../pdf-pixels.ts';
import { newStranger } from './visit.ts';

const { resolve } = createRequire(import.meta.url);
const read = (name: string) => readFileSync(resolve(`@fontsource/andika/files/${name}`));
const typeface = openTypeface({ regular: ANDIKA.regular.map(read), bold: ANDIKA.bold.map(read) });
const pictures: readonly (readonly [string, Picture])[] = Object.entries(
  JSON.parse(readFileSync(new URL('../../print/pictures/pictures.json', import.meta.url), 'utf8')),
);

/** A picture's side in pixels, and on the page in mm; how many stand in a row and in a column. */
const SIDE = 96;
const MM = 16;
const [ACROSS, DOWN] = [13, 17];
const DPI = (SIDE / MM) * INCH;

/** A shape as the preview draws it (web/screens/print/page-preview.tsx). */
function drawn(mark: ShapeMark): string {
  const { path, x = 0, y = 0, scale = 1, fill = 'none', stroke = 'none', line = 0 } = mark;
  const rule = mark.evenOdd ? 'evenodd' : 'nonzero';
  const cap = mark.round ? 'round' : 'butt';
  return (
    `<path d="${path}" transform="translate(${x} ${y}) scale(${scale})" opacity="${mark.opacity ?? 1}" ` +
    `fill="${fill}" fill-rule="${rule}" stroke="${stroke}" stroke-width="${line / scale}" ` +
    `stroke-linejoin="round" stroke-linecap="${cap}"/>`
  );
}

/** How dark a browser paints each pixel of a page, from 0 to 255, row by row. */
async function inBrowser(marks: readonly ShapeMark[]): Promise<Buffer> {
  const context = await newStranger('http://127.0.0.1/', {});
  const page = await context.newPage();
  const [width, height] = [ACROSS * SIDE, DOWN * SIDE];
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${ACROSS * MM} ${DOWN * MM}">${marks.map(drawn).join('')}</svg>`;
  const text = await page.evaluate(
    async ([source, wide, high]) => {
      const image = new Image();
      image.src = `data:image/svg+xml,${encodeURIComponent(source)}`;
      await image.decode();
      const canvas = new OffscreenCanvas(wide, high);
      const surface = canvas.getContext('2d')!;
      surface.fillStyle = '#ffffff';
      surface.fillRect(0, 0, wide, high);
      surface.drawImage(image, 0, 0);
      const { data } = surface.getImageData(0, 0, wide, high);
      let dark = '';
      for (let at = 0; at < data.length; at += 4) {
        dark += String.fromCharCode(255 - (data[at]! + data[at + 1]! + data[at + 2]!) / 3);
      }
      return btoa(dark);
    },
    [svg, width, height] as const,
  );
  await context.close();
  return Buffer.from(text, 'base64');
}

it('every picture looks alike as a PDF and in the preview, to less than a pixel', async () => {
  const perPage = ACROSS * DOWN;
  expect(pictures.length).toBeGreaterThan(150);
  expect(pictures.length).toBeLessThanOrEqual(perPage);
  const marks = pictures.flatMap(([alt, picture], at) => {
    const place = { x: (at % ACROSS) * MM, y: Math.floor(at / ACROSS) * MM, size: MM, alt };
    return pictureMarks(picture, place, false) as readonly ShapeMark[];
  });
  const page: Page = { paper: 'letter', marks };
  const [raster] = await renderPdf(
    await makePdf({ title: 'Pictures', pages: [page] }, typeface),
    DPI,
  );
  const browser = await inBrowser(marks);
  const apart = pictures.flatMap(([keyword], at) => {
    const far = farthest(raster!, browser, at % ACROSS, Math.floor(at / ACROSS));
    return far > 0.2 ? [`${keyword} ${far.toFixed(2)}`] : [];
  });
  expect(apart).toEqual([]);
});

/** How far two paintings of a picture differ where they differ most, over a square of 4 pixels a side. */
function farthest(raster: Raster, browser: Buffer, column: number, row: number): number {
  const BLOCK = 4;
  let most = 0;
  for (let top = row * SIDE; top < (row + 1) * SIDE; top += BLOCK) {
    for (let left = column * SIDE; left < (column + 1) * SIDE; left += BLOCK) {
      let sum = 0;
      for (let y = top; y < top + BLOCK; y += 1) {
        for (let x = left; x < left + BLOCK; x += 1) {
          const paper = raster.dark((x + 0.5) * raster.pixel, (y + 0.5) * raster.pixel);
          sum += paper - browser[y * ACROSS * SIDE + x]! / 255;
        }
      }
      most = Math.max(most, Math.abs(sum) / BLOCK ** 2);
    }
  }
  return most;
}
