/**
 * Slides as a presentation file (Office Open XML, ECMA-376; .pptx), which every
 * usual program opens.
 *
 * PptxGenJS writes the package and the notes; the slides are our own parts (slide-part.ts), since it knows
 * neither groups nor what clicks move. Then the package is put together again, because
 * its own carries the time of day and names parts that are not there. The same
 * slides give the same bytes. About 3 ms a slide.
 */
import { strFromU8, strToU8, unzipSync } from 'fflate';
import pptxgen from 'pptxgenjs';
import { INCH } from './paper.ts';
import { type Deck, slideSize } from './slide.ts';
import { slidePart } from './slide-part.ts';
import { steadyZip } from './steady-zip.ts';

/** The bytes of a .pptx. */
export async function slideFile({ title, format, slides }: Deck): Promise<Uint8Array> {
  const { width, height } = slideSize[format];
  const deck = new pptxgen();
  deck.defineLayout({ name: format, width: width / INCH, height: height / INCH });
  deck.layout = format;
  deck.title = title;
  deck.subject = title;
  deck.author = 'Sweepline';
  deck.company = 'Sweepline';
  const place = { x: 0, y: -20 / INCH, w: width / INCH, h: 15 / INCH };
  const titled = { name: 'title', type: 'title', ...place } as const;
  deck.defineSlideMaster({
    title: 'Cards',
    objects: [{ placeholder: { options: titled, text: '' } }],
  });
  for (const { notes } of slides) deck.addSlide({ masterName: 'Cards' }).addNotes(notes);
  const written = await deck.write({ outputType: 'uint8array', compression: false });
  const parts = unzipSync(written as Uint8Array);
  slides.forEach((slide, at) => {
    parts[`ppt/slides/slide${at + 1}.xml`] = strToU8(slidePart(slide, width));
  });
  return steadyPackage(parts);
}

/** A day that stands in every file, so that files can be compared byte by byte. */
const MADE = '2000-01-01T00:00:00Z';

/** The package with its parts in order, without times, and naming no part that is not there. */
function steadyPackage(parts: Readonly<Record<string, Uint8Array>>): Uint8Array {
  const names = Object.keys(parts).filter((name) => !name.endsWith('/'));
  const there = new Set(names.map((name) => `/${name}`));
  const ordered = names.sort((one, other) => rank(one) - rank(other) || (one < other ? -1 : 1));
  return steadyZip(
    ordered.map((name) => [name, steadyPart(name, parts[name] as Uint8Array, there)]),
  );
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
  if (name === '[Content_Types].xml') {
    return edited(part, (xml) =>
      xml.replace(/\s*<Override PartName="([^"]*)"[^>]*\/>/g, (whole, part: string) =>
        there.has(part) ? whole : '',
      ),
    );
  }
  return part;
}

function edited(part: Uint8Array, edit: (xml: string) => string): Uint8Array {
  return strToU8(edit(strFromU8(part)));
}
