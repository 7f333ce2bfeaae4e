import { readFileSync } from 'node:fs';
import PDFDocument from 'pdfkit';
import { toBytes } from 'pdfkit/output';
import { CORRESPONDENCES } from '../core/language/correspondences.ts';
import { fromRoot } from '../house/root.mjs';
import { cardPages } from '../print/cards/card-pages.ts';
import { paperCard } from '../print/cards/paper-card.ts';
import { makePdf } from '../print/document.ts';
import { inks } from '../print/ink.ts';
import type { Page } from '../print/page.ts';
import type { Pictures } from '../print/picture.ts';
import { openTypeface } from '../print/typeface.ts';
import { ANDIKA } from '../print/typeface-files.ts';
import { visit } from '../test/browser/visit.ts';
import { type Measurement, measure, summary } from './measure.ts';

/** How many cards a class prints at once. */
const CARDS = 120;
/** In our own order so many cards were taught by this step: enough for a file of 120. */
const STEP = 65;

/** 120 cards as a file, beside PDFKit alone with as many texts, and what the file weighs. */
export async function measurements(): Promise<readonly Measurement[]> {
  const typeface = openTypeface({ regular: ANDIKA.regular.map(font), bold: ANDIKA.bold.map(font) });
  const pictures: Pictures = new Map(
    Object.entries(JSON.parse(read('print/pictures/pictures.json').toString())),
  );
  const look = { inks: inks(false), typeface, grey: false, pictures };
  const ids = CORRESPONDENCES.slice(0, CARDS).map(({ id }) => id);
  const lay = () =>
    cardPages(ids.map(paperCard), { kind: 'index', paper: 'letter', backs: null }, look);
  const pages = lay();
  const plain = await measure({
    name: `PDFKit alone, as many texts as on ${CARDS} cards`,
    runs: 12,
    run: () => plainTexts(pages),
  });
  const cards = await measure({
    name: `${CARDS} cards with pictures`,
    aim: 500,
    runs: 12,
    run: () => makePdf({ title: 'Cards', pages: lay() }, typeface),
  });
  const bytes = await makePdf({ title: 'Cards', pages }, typeface);
  const ratio = (cards.median / plain.median).toFixed(1);
  return [
    plain,
    { ...cards, name: `${cards.name} (${ratio} times PDFKit alone)` },
    summary({
      name: `${CARDS} cards with pictures`,
      unit: 'KB',
      aim: 500,
      values: [bytes.length / 1000],
    }),
    await inBrowser(),
  ];
}

const read = (path: string) => readFileSync(fromRoot(path));
const font = (name: string) => read(`node_modules/@fontsource/andika/files/${name}`);

/** The same number of texts in the same typeface, each at a place of its own, and nothing else. */
async function plainTexts(pages: readonly Page[]): Promise<Uint8Array> {
  const document = new PDFDocument({ autoFirstPage: false, font: null as unknown as string });
  const bytes = toBytes(document);
  document.registerFont('letters', font(ANDIKA.regular[0]));
  for (const { marks } of pages) {
    document.addPage().font('letters');
    for (const mark of marks) {
      if (mark.kind === 'text') document.text(mark.text, mark.x, mark.y, { lineBreak: false });
    }
  }
  document.end();
  return bytes;
}

/** From the button to the file in a browser, its code already there. */
async function inBrowser(): Promise<Measurement> {
  const { page, end } = await visit({ path: '#/print', upTo: STEP });
  try {
    const button = page.getByRole('button', { name: 'Save the PDF' });
    await button.waitFor();
    const values: number[] = [];
    for (let run = 0; run < 8; run += 1) {
      const saved = page.waitForEvent('download');
      const start = performance.now();
      await button.click();
      await saved;
      if (run > 1) values.push(performance.now() - start);
    }
    const cards = await page
      .getByText(/\d+ cards on/)
      .first()
      .textContent();
    return summary({ name: `in the browser: ${cards?.trim()}`, unit: 'ms', aim: 1000, values });
  } finally {
    await end();
  }
}
