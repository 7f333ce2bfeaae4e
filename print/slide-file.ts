/**
 * Slides as a presentation file (Office Open XML, ECMA-376; .pptx), which every
 * usual program opens.
 *
 * PptxGenJS writes the parts; then the package is put together again, because
 * its own carries the time of day and names parts that are not there. The same
 * slides give the same bytes. About 3 ms a slide.
 */
import { strFromU8, strToU8, unzipSync, type Zippable, zipSync } from 'fflate';
import pptxgen from 'pptxgenjs';
import type { OutlineStep } from './glyphs.ts';
import { boundsOf } from './outline.ts';
import { SLIDE, SLIDE_GROUND, type Slide, type SlideShape } from './slide.ts';

/** Millimetres in an inch, and points in a millimetre. */
const INCH = 25.4;
const POINTS = 72 / INCH;

/** The bytes of a .pptx. `title` is what programs show as the file's own name. */
export async function slideFile(slides: readonly Slide[], title: string): Promise<Uint8Array> {
  const deck = new pptxgen();
  deck.defineLayout({ name: 'wide', width: SLIDE.width / INCH, height: SLIDE.height / INCH });
  deck.layout = 'wide';
  deck.title = title;
  deck.subject = title;
  deck.author = 'Sweepline';
  deck.company = 'Sweepline';
  for (const { shapes, notes } of slides) {
    const slide = deck.addSlide();
    slide.background = { color: color(SLIDE_GROUND) };
    for (const shape of shapes) addShape(slide, shape);
    slide.addNotes(notes);
  }
  const written = await deck.write({ outputType: 'uint8array', compression: false });
  return steadyPackage(written as Uint8Array);
}

function addShape(slide: pptxgen.Slide, shape: SlideShape): void {
  const bounds = boundsOf(shape.steps);
  if (!bounds) return;
  const { left, top, right, bottom } = bounds;
  const { name, fill, stroke, line = 0, dashed } = shape;
  slide.addShape('custGeom' as pptxgen.ShapeType, {
    objectName: name,
    x: left / INCH,
    y: top / INCH,
    w: (right - left) / INCH,
    h: (bottom - top) / INCH,
    points: shape.steps.map((step) => pointOf(step, left, top)),
    ...(fill ? { fill: { color: color(fill) } } : {}),
    ...(stroke
      ? {
          line: {
            color: color(stroke),
            width: line * POINTS,
            ...(dashed ? { dashType: 'dash' as const } : {}),
          },
        }
      : {}),
  });
}

type Point = NonNullable<pptxgen.ShapeProps['points']>[number];

/** A step in inches from the shape's own corner. */
function pointOf(step: OutlineStep, left: number, top: number): Point {
  const x = (value: number) => (value - left) / INCH;
  const y = (value: number) => (value - top) / INCH;
  if (step.kind === 'close') return { close: true };
  const end = { x: x(step.x), y: y(step.y) };
  if (step.kind === 'quadratic') {
    return { ...end, curve: { type: 'quadratic', x1: x(step.x1), y1: y(step.y1) } };
  }
  if (step.kind === 'cubic') {
    const first = { x1: x(step.x1), y1: y(step.y1) };
    return { ...end, curve: { type: 'cubic', ...first, x2: x(step.x2), y2: y(step.y2) } };
  }
  return step.kind === 'move' ? { ...end, moveTo: true } : end;
}

function color(token: string): string {
  return token.slice(1).toUpperCase();
}

/** A day that stands in every file, so that files can be compared byte by byte. */
const MADE = '2000-01-01T00:00:00Z';
/** The earliest day that a zip archive can name; its fields are those of the local clock. */
const PACKED = new Date(1980, 0, 1);

/** The package with its parts in order, without times, and naming no part that is not there. */
function steadyPackage(bytes: Uint8Array): Uint8Array {
  const parts = unzipSync(bytes);
  const names = Object.keys(parts).filter((name) => !name.endsWith('/'));
  const there = new Set(names.map((name) => `/${name}`));
  const ordered = names.sort((one, other) => rank(one) - rank(other) || (one < other ? -1 : 1));
  const packed: Zippable = {};
  for (const name of ordered) {
    packed[name] = [
      steadyPart(name, parts[name] as Uint8Array, there),
      { mtime: PACKED, level: 6 },
    ];
  }
  return zipSync(packed);
}

/** Readers want the list of types first and what leads to the others next. */
function rank(name: string): number {
  if (name === '[Content_Types].xml') return 0;
  return name === '_rels/.rels' ? 1 : 2;
}

function steadyPart(name: string, part: Uint8Array, there: ReadonlySet<string>): Uint8Array {
  if (name === 'docProps/core.xml') {
    return edited(part, (xml) =>
      xml.replace(/(<dcterms:(?:created|modified)[^>]*>)[^<]*/g, `$1${MADE}`),
    );
  }
  if (name === 'docProps/app.xml') {
    return edited(part, (xml) => xml.replace(/(<Application>)[^<]*/, '$1Sweepline'));
  }
  if (/^ppt\/slides\/slide\d+\.xml$/.test(name)) return edited(part, withDescriptions);
  if (name === '[Content_Types].xml') {
    return edited(part, (xml) =>
      xml.replace(/\s*<Override PartName="([^"]*)"[^>]*\/>/g, (whole, part: string) =>
        there.has(part) ? whole : '',
      ),
    );
  }
  return part;
}

/** Each card and the line described for a screen reader by its name; what only decorates them is left out of it. */
function withDescriptions(xml: string): string {
  return xml.replace(
    /(<p:cNvPr id="\d+" name="((?:card|sweep line|words)[^"]*)")(?: descr="[^"]*")?/g,
    '$1 descr="$2"',
  );
}

function edited(part: Uint8Array, edit: (xml: string) => string): Uint8Array {
  return strToU8(edit(strFromU8(part)));
}
