/**
 * Pages as a PDF of exact size.
 *
 * Everything is drawn in mm: one scaling at the start of each page, no rounding to points. The file asks
 * the print dialog not to scale (PrintScaling None, ISO 32000-1 §12.2) and how to turn the sheet when
 * both sides are printed. Dates and the file's id are fixed, so the same pages give the same bytes.
 * Whoever cannot see a page hears its parts in their order, pictures by what they show (structure.ts).
 * Letters are embedded as a subset of Andika; a page that asks for a letter it lacks throws instead of
 * printing a blank. PDFKit rather than a drawing of our own: it subsets fonts, and runs in Node and in
 * browsers alike. About 1 ms for a page of a few cards.
 */
import PDFDocument from 'pdfkit';
import { toBytes } from 'pdfkit/output';
import { type Page, type PageMark, pageSize, type ShapeMark, type TextMark } from './page.ts';
import { INCH } from './paper.ts';
import { structureOf } from './structure.ts';
import type { OverSign, Typeface } from './typeface.ts';

export interface DocumentSpec {
  /** The title that the reader's window shows. */
  readonly title: string;
  readonly pages: readonly Page[];
  /** Along which edge a sheet is turned; left out for pages printed on one side. */
  readonly turn?: 'long' | 'short';
}

/** A day that stands in every file, so that files can be compared byte by byte. */
const MADE = new Date('2000-01-01T00:00:00Z');
const PER_MM = 72 / INCH;
/** No ligatures: ff keeps two letters, as children write it. PDFKit hands this on to fontkit, whose form it has. */
const features = { liga: false } as unknown as PDFKit.Mixins.OpenTypeFeatures[];

/** The bytes of a PDF (version 1.7) with one page for each of `pages`. */
export async function makePdf(spec: DocumentSpec, typeface: Typeface): Promise<Uint8Array> {
  const document = new PDFDocument({
    autoFirstPage: false,
    margin: 0,
    pdfVersion: '1.7',
    font: null as unknown as string,
    lang: 'en-US',
    tagged: true,
    info: { Title: spec.title, Producer: 'Sweepline', Creator: 'Sweepline', CreationDate: MADE },
  });
  const bytes = toBytes(document);
  askForTrueSize(document, spec.turn);
  const structure = structureOf(document);
  for (const [weight, files] of Object.entries(typeface.files)) {
    files.forEach((file, at) => {
      document.registerFont(`${weight} ${at}`, file);
    });
  }
  for (const page of spec.pages) {
    const { width, height } = pageSize(page);
    document.addPage({ size: [width * PER_MM, height * PER_MM], margin: 0 });
    document.scale(PER_MM);
    if (page.upsideDown) document.translate(width, height).scale(-1);
    structure.paintParts(page, (mark, isFollowed) => paint(document, mark, typeface, isFollowed));
  }
  document.end();
  return bytes;
}

function askForTrueSize(document: PDFKit.PDFDocument, turn: DocumentSpec['turn']): void {
  const duplex = { long: 'DuplexFlipLongEdge', short: 'DuplexFlipShortEdge' } as const;
  const preferences = document.ref({
    PrintScaling: 'None',
    DisplayDocTitle: true,
    Duplex: turn ? duplex[turn] : 'Simplex',
  });
  // The types do not name the catalog, the one place where a file says how it is to be printed.
  const { _root: catalog } = document as unknown as {
    readonly _root: { readonly data: Record<string, unknown> };
  };
  catalog.data.ViewerPreferences = preferences;
}

function paint(
  document: PDFKit.PDFDocument,
  mark: PageMark,
  typeface: Typeface,
  isFollowed: boolean,
): void {
  if (mark.kind === 'text') paintText(document, mark, typeface, isFollowed);
  else paintShape(document, mark);
}

/** One line; where it is followed by more of its part, a space behind it keeps their words apart for the ear. */
function paintText(
  document: PDFKit.PDFDocument,
  mark: TextMark,
  typeface: Typeface,
  isFollowed: boolean,
): void {
  const { text, x, y, size, ink, weight = 'regular', align = 'left' } = mark;
  const { width } = typeface.lay(text, size, weight);
  const { runs, over } = typeface.lay(isFollowed ? `${text} ` : text, size, weight);
  const start = x - { left: 0, center: width / 2, right: width }[align];
  document.fillColor(ink).fontSize(size);
  // Signs over a pair of letters are drawn; whoever hears the text is told of them.
  if (over.length > 0) document.markContent('Span', { actual: text });
  for (const run of runs) {
    document
      .font(`${weight} ${run.file}`)
      .text(run.text, start + run.x, y, { lineBreak: false, baseline: 'alphabetic', features });
  }
  for (const sign of over) paintShape(document, overShape(sign, start, y, size, ink));
  if (over.length > 0) document.endMarkedContent();
}

/** The long arc or bar over a pair of letters, as an outline. */
function overShape(
  { sign, x, width }: OverSign,
  start: number,
  y: number,
  size: number,
  ink: string,
): ShapeMark {
  const [left, right, top] = [start + x + width * 0.12, start + x + width * 0.88, y - size * 0.66];
  const middle = (left + right) / 2;
  const path =
    sign === 'bar'
      ? `M${left} ${top}H${right}`
      : `M${left} ${top - size * 0.06}Q${middle} ${top + size * 0.1} ${right} ${top - size * 0.06}`;
  return { kind: 'shape', path, stroke: ink, line: size * 0.06 };
}

function paintShape(document: PDFKit.PDFDocument, mark: ShapeMark): void {
  const { path, x = 0, y = 0, scale = 1, fill, stroke, opacity = 1, line = 0.2, dash } = mark;
  document.save();
  if (x !== 0 || y !== 0) document.translate(x, y);
  if (scale !== 1) document.scale(scale);
  if (opacity < 1) document.opacity(opacity);
  document.path(path);
  if (stroke) {
    document.lineWidth(line / scale).lineJoin('round');
    if (mark.round) document.lineCap('round');
    if (dash) document.dash(dash[0] / scale, { space: dash[1] / scale });
  }
  const rule = mark.evenOdd ? 'even-odd' : 'non-zero';
  if (fill && stroke) document.fillAndStroke(fill, stroke, rule);
  else if (fill) document.fill(fill, rule);
  else document.stroke(stroke ?? '#000000');
  document.restore();
}
