/**
 * The structure of a file: its parts as a tree in the order in which they are read, each pointing to what was
 * painted for it (ISO 32000-1 §14.7). All that is painted is of a part or marked as decoration.
 */
import { type Page, type PageMark, pageSize } from './page.ts';
import { INCH } from './paper.ts';
import type { TaggedPart } from './part.ts';

export interface Structure {
  /**
   * Paints the marks of the page that the document is at, in their order, and marks which part each is of.
   * `isFollowed`: whether another mark of the same part comes next.
   */
  paintParts(page: Page, paint: (mark: PageMark, isFollowed: boolean) => void): void;
}

/** The structure of a document that was opened as a tagged one; it ends with the document. */
export function structureOf(document: PDFKit.PDFDocument): Structure {
  const root = document.struct('Document');
  document.addStructure(root);
  const elements = new Map<TaggedPart, PDFKit.PDFStructureElement>();
  const elementOf = (part: TaggedPart, page: Page): PDFKit.PDFStructureElement => {
    const known = elements.get(part);
    if (known) return known;
    const parent = part.within ? elementOf(part.within, page) : root;
    const element = document.struct(part.role, optionsOf(part, page));
    parent.add(element);
    elements.set(part, element);
    return element;
  };
  return {
    paintParts(page, paint) {
      for (const run of runsOf(page.marks)) {
        const part = run[0]?.part;
        if (part) elementOf(part, page).add(document.markStructureContent(part.role));
        else document.markContent('Artifact', { type: 'Layout' });
        run.forEach((mark, at) => {
          paint(mark, part !== undefined && at + 1 < run.length);
        });
        document.endMarkedContent();
      }
    },
  };
}

/** Marks that come one after another and are of one part. */
function runsOf(marks: readonly PageMark[]): readonly (readonly PageMark[])[] {
  const runs: PageMark[][] = [];
  for (const mark of marks) {
    const run = runs.at(-1);
    if (run?.[0]?.part === mark.part && run) run.push(mark);
    else runs.push([mark]);
  }
  return runs;
}

/** What PDFKit takes for an element; its types leave out the box of a picture. */
interface ElementOptions extends PDFKit.Mixins.StructureElementOptions {
  readonly bbox?: readonly number[];
}

function optionsOf({ says, shows }: TaggedPart, page: Page): ElementOptions {
  return {
    ...(says === undefined ? {} : { actual: says }),
    ...(shows ? { alt: shows.alt, bbox: cornersOf(shows.box, page) } : {}),
  };
}

/** Left, top, right and bottom of a box in points, from the top left of the sheet as it lies in the file. */
function cornersOf(
  { x, y, width, height }: NonNullable<TaggedPart['shows']>['box'],
  page: Page,
): readonly number[] {
  const sheet = pageSize(page);
  const left = page.upsideDown ? sheet.width - x - width : x;
  const top = page.upsideDown ? sheet.height - y - height : y;
  return [left, top, left + width, top + height].map((length) => (length * 72) / INCH);
}
