/**
 * Slides as an OpenDocument presentation (ISO/IEC 26300, version 1.3; .odp): the same things, titles, notes
 * and moves as in slide-file.ts. A package of five parts that we write ourselves, its type first and
 * not compressed, as part 2 of the standard asks. The same slides give the same bytes.
 */

import { OdpLooks } from './odp-looks.ts';
import { pageXml } from './odp-page.ts';
import type { Size } from './paper.ts';
import { type Deck, SLIDE_GROUND, slideSize } from './slide.ts';
import { steadyZip } from './steady-zip.ts';
import { escaped } from './xml.ts';

const TYPE = 'application/vnd.oasis.opendocument.presentation';

/** The bytes of an .odp. */
export function odpFile(deck: Deck): Uint8Array {
  const size = slideSize[deck.format];
  return steadyZip(
    [
      ['mimetype', TYPE],
      ['META-INF/manifest.xml', manifest()],
      ['content.xml', content(deck, size)],
      ['styles.xml', styles(size)],
      ['meta.xml', meta(deck.title)],
    ],
    ['mimetype'],
  );
}

const HEAD = '<?xml version="1.0" encoding="UTF-8"?>';
const OASIS = 'urn:oasis:names:tc:opendocument:xmlns';
const SPACES = [
  ...['office', 'style', 'text', 'presentation', 'meta'].map(
    (name) => `xmlns:${name}="${OASIS}:${name}:1.0"`,
  ),
  `xmlns:anim="${OASIS}:animation:1.0"`,
  `xmlns:draw="${OASIS}:drawing:1.0"`,
  `xmlns:fo="${OASIS}:xsl-fo-compatible:1.0"`,
  `xmlns:svg="${OASIS}:svg-compatible:1.0"`,
  `xmlns:smil="${OASIS}:smil-compatible:1.0"`,
  'xmlns:dc="http://purl.org/dc/elements/1.1/"',
  'xmlns:xlink="http://www.w3.org/1999/xlink"',
].join(' ');
const VERSION = 'office:version="1.3"';

function content({ slides }: Deck, size: Size): string {
  const looks = new OdpLooks();
  const pages = slides.map((slide, at) => pageXml(slide, at, size, looks)).join('');
  return (
    `${HEAD}<office:document-content ${SPACES} ${VERSION}><office:automatic-styles>` +
    `<style:style style:name="page" style:family="drawing-page"><style:drawing-page-properties draw:fill="solid" draw:fill-color="${SLIDE_GROUND}" presentation:background-visible="true" presentation:background-objects-visible="true"/></style:style>` +
    `${looks.styles()}</office:automatic-styles>` +
    `<office:body><office:presentation>${pages}</office:presentation></office:body></office:document-content>`
  );
}

/** The one master: its page, how titles and notes look, the dashes of a card face down. */
function styles({ width, height }: Size): string {
  const layout = (name: string, wide: number, high: number) =>
    `<style:page-layout style:name="${name}"><style:page-layout-properties fo:margin-top="0mm" fo:margin-bottom="0mm" fo:margin-left="0mm" fo:margin-right="0mm" fo:page-width="${wide}mm" fo:page-height="${high}mm" style:print-orientation="${wide > high ? 'landscape' : 'portrait'}"/></style:page-layout>`;
  const plain = (name: string, family: string) =>
    `<style:style style:name="${name}" style:family="${family}"><style:graphic-properties draw:stroke="none" draw:fill="none"/><style:text-properties fo:language="en" fo:country="US" fo:font-size="18pt"/></style:style>`;
  return (
    `${HEAD}<office:document-styles ${SPACES} ${VERSION}><office:styles>` +
    '<draw:stroke-dash draw:name="waiting" draw:style="rect" draw:dots1="1" draw:dots1-length="3mm" draw:distance="2.2mm"/>' +
    `${plain('standard', 'graphic')}${plain('cards-title', 'presentation')}${plain('cards-notes', 'presentation')}</office:styles>` +
    `<office:automatic-styles>${layout('slide', width, height)}${layout('notes', 210, 297)}` +
    `<style:style style:name="ground" style:family="drawing-page"><style:drawing-page-properties draw:fill="solid" draw:fill-color="${SLIDE_GROUND}"/></style:style></office:automatic-styles>` +
    '<office:master-styles><style:master-page style:name="cards" style:page-layout-name="slide" draw:style-name="ground">' +
    '<presentation:notes style:page-layout-name="notes"/></style:master-page></office:master-styles></office:document-styles>'
  );
}

/** Who made it, without the time of day. */
function meta(title: string): string {
  return (
    `${HEAD}<office:document-meta ${SPACES} ${VERSION}><office:meta><meta:generator>Sweepline</meta:generator>` +
    `<dc:title>${escaped(title)}</dc:title><dc:language>en-US</dc:language>` +
    '<meta:creation-date>2000-01-01T00:00:00</meta:creation-date></office:meta></office:document-meta>'
  );
}

function manifest(): string {
  const entry = (path: string, type: string) =>
    `<manifest:file-entry manifest:full-path="${path}" manifest:media-type="${type}"/>`;
  return (
    `${HEAD}<manifest:manifest xmlns:manifest="${OASIS}:manifest:1.0" manifest:version="1.3">` +
    `<manifest:file-entry manifest:full-path="/" manifest:version="1.3" manifest:media-type="${TYPE}"/>` +
    `${['content.xml', 'styles.xml', 'meta.xml'].map((path) => entry(path, 'text/xml')).join('')}</manifest:manifest>`
  );
}
