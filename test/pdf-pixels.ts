/** Renders printed pages with PDFium (the renderer of Chromium), so that sizes are measured on pixels. */
import { PDFiumLibrary } from '@hyzyla/pdfium';
import { INCH } from '../print/paper.ts';

/** A rendered page; lengths are in mm from its top left corner. */
export interface Raster {
  /** Of the whole page. */
  readonly width: number;
  readonly height: number;
  /** The side of a pixel. */
  readonly pixel: number;
  /** How dark a place is, from 0 (white) to 1; 0 outside the page. */
  dark(x: number, y: number): number;
}

/** A rectangle in mm. */
export interface Area {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Started once: it is WebAssembly, and a test file renders many documents. */
let library: Promise<PDFiumLibrary> | undefined;

/** The pages of a PDF as pixels, `dpi` to an inch. */
export async function renderPdf(bytes: Uint8Array, dpi: number): Promise<readonly Raster[]> {
  library ??= PDFiumLibrary.init();
  const document = await (await library).loadDocument(bytes);
  const rasters: Raster[] = [];
  for (const page of document.pages()) {
    const { originalWidth, originalHeight } = page.getOriginalSize();
    const image = await page.render({ scale: dpi / 72, render: 'bitmap' });
    const pixels = image.data.slice();
    rasters.push({
      width: (originalWidth / 72) * INCH,
      height: (originalHeight / 72) * INCH,
      pixel: INCH / dpi,
      dark(x, y) {
        const [column, row] = [x, y].map((length) => Math.floor((length / INCH) * dpi)) as [
          number,
          number,
        ];
        if (column < 0 || row < 0 || column >= image.width || row >= image.height) return 0;
        const at = (row * image.width + column) * 4;
        const sum = pixels[at]! + pixels[at + 1]! + pixels[at + 2]!;
        return 1 - sum / (3 * 255);
      },
    });
  }
  document.destroy();
  return rasters;
}

/** The box around everything darker than `least` in an area; null where all is white. */
export function inkBox(raster: Raster, area: Area, least = 0.1): Area | null {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  const step = raster.pixel;
  for (let y = area.top + step / 2; y < area.bottom; y += step) {
    for (let x = area.left + step / 2; x < area.right; x += step) {
      if (raster.dark(x, y) <= least) continue;
      left = Math.min(left, x - step / 2);
      right = Math.max(right, x + step / 2);
      top = Math.min(top, y - step / 2);
      bottom = Math.max(bottom, y + step / 2);
    }
  }
  return right < left ? null : { left, top, right, bottom };
}

/** The middles of the dark places along a line: across at the height `y`, or down at `x`. */
export function crossings(
  raster: Raster,
  line: { readonly y: number } | { readonly x: number },
  [from, to]: readonly [number, number],
  least = 0.1,
): readonly number[] {
  const middles: number[] = [];
  let start: number | null = null;
  for (let at = from; at <= to; at += raster.pixel) {
    const dark = 'y' in line ? raster.dark(at, line.y) : raster.dark(line.x, at);
    if (dark > least) start ??= at;
    else if (start !== null) {
      middles.push((start + at) / 2);
      start = null;
    }
  }
  return middles;
}

/** Whether the margins of a page are white, `edge` mm wide. */
export function marginsAreWhite(raster: Raster, edge: number): boolean {
  const { width, height } = raster;
  const margins: readonly Area[] = [
    { left: 0, top: 0, right: width, bottom: edge },
    { left: 0, top: height - edge, right: width, bottom: height },
    { left: 0, top: 0, right: edge, bottom: height },
    { left: width - edge, top: 0, right: width, bottom: height },
  ];
  return margins.every((area) => inkBox(raster, area, 0.02) === null);
}
