/** One slide as a page of an OpenDocument presentation (part 3, §10.2 drawing, §15 animation). */

import type { OdpLooks } from './odp-looks.ts';
import { boundsOf, placed } from './outline.ts';
import { outlinePath } from './outline-path.ts';
import type { Size } from './paper.ts';
import type { Move, Slide, SlideShape, SlideThing } from './slide.ts';
import { SWEEP_TIME } from './slide-timing.ts';
import { escaped } from './xml.ts';

/** The XML of the slide at a place of its deck, counted from 0. */
export function pageXml(
  { title, things, clicks, notes }: Slide,
  place: number,
  { width }: Size,
  looks: OdpLooks,
): string {
  const idOf = (thing: number) => `slide${place + 1}-thing${thing + 1}`;
  const paragraphs = notes.split('\n').map((line) => `<text:p>${escaped(line)}</text:p>`);
  return (
    `<draw:page draw:name="${escaped(title)}" draw:style-name="page" draw:master-page-name="cards">` +
    // Above the edge, where no one in the room sees it.
    `<draw:frame presentation:style-name="cards-title" presentation:class="title" presentation:user-transformed="true" draw:layer="layout" svg:x="0mm" svg:y="-20mm" svg:width="${width}mm" svg:height="15mm"><draw:text-box><text:p>${escaped(title)}</text:p></draw:text-box></draw:frame>` +
    things.map((thing, at) => groupXml(thing, idOf(at), looks)).join('') +
    animations(clicks, idOf) +
    `<presentation:notes><draw:page-thumbnail presentation:class="page" draw:page-number="${place + 1}" draw:layer="layout" svg:x="30mm" svg:y="20mm" svg:width="150mm" svg:height="100mm"/>` +
    `<draw:frame presentation:style-name="cards-notes" presentation:class="notes" draw:layer="layout" svg:x="30mm" svg:y="140mm" svg:width="150mm" svg:height="130mm"><draw:text-box>${paragraphs.join('')}</draw:text-box></draw:frame></presentation:notes></draw:page>`
  );
}

function groupXml({ name, says, shapes }: SlideThing, id: string, looks: OdpLooks): string {
  const said = says === null ? '' : `<svg:title>${escaped(says)}</svg:title>`;
  return (
    `<draw:g draw:name="${escaped(name)}" xml:id="${id}" draw:id="${id}">${said}` +
    `${shapes.map((shape) => pathXml(shape, looks)).join('')}</draw:g>`
  );
}

/** An outline in thousandths of a mm from its own corner. */
function pathXml(shape: SlideShape, looks: OdpLooks): string {
  const bounds = boundsOf(shape.steps);
  if (!bounds) throw new Error('An outline of a slide has no point.');
  const { left, top, right, bottom } = bounds;
  const [wide, high] = [right - left, bottom - top].map((mm) => Math.max(1, Math.round(mm * 1000)));
  const fine = { scaleX: 1000, scaleY: 1000, x: -left * 1000, y: -top * 1000 };
  const whole = outlinePath(placed(shape.steps, fine)).replace(
    /-?[\d.]+/g,
    (each) => `${Math.round(Number(each))}`,
  );
  const mm = (value: number) => `${value.toFixed(3)}mm`;
  return (
    `<draw:path draw:style-name="${looks.nameOf(shape)}" draw:layer="layout" svg:x="${mm(left)}" svg:y="${mm(top)}" svg:width="${mm(right - left)}" svg:height="${mm(bottom - top)}" ` +
    `svg:viewBox="0 0 ${wide} ${high}" svg:d="${whole}"/>`
  );
}

/** What each click moves: a sequence whose members wait for the next click, all moves of one beginning at once. */
function animations(clicks: readonly (readonly Move[])[], idOf: (thing: number) => string): string {
  if (clicks.length === 0) return '';
  const clicked = clicks.map(
    (moves) =>
      '<anim:par smil:begin="next" smil:fill="hold"><anim:par smil:begin="0s" smil:fill="hold">' +
      moves
        .map((move, at) => moveXml(move, idOf(move.thing), at === 0 ? 'on-click' : 'with-previous'))
        .join('') +
      '</anim:par></anim:par>',
  );
  return (
    '<anim:par presentation:node-type="timing-root" smil:dur="indefinite" smil:restart="never"><anim:seq presentation:node-type="main-sequence" smil:dur="indefinite">' +
    `${clicked.join('')}</anim:seq></anim:par>`
  );
}

/** Names by which programs list what moves. */
const PRESETS: Readonly<Record<Move['how'], string>> = {
  sweep:
    'presentation:preset-class="entrance" presentation:preset-id="ooo-entrance-wipe" presentation:preset-sub-type="from-left"',
  appear: 'presentation:preset-class="entrance" presentation:preset-id="ooo-entrance-appear"',
  vanish: 'presentation:preset-class="exit" presentation:preset-id="ooo-exit-disappear"',
};

function moveXml({ how }: Move, id: string, node: 'on-click' | 'with-previous'): string {
  const shown = how === 'vanish' ? 'hidden' : 'visible';
  const wipe =
    how === 'sweep'
      ? `<anim:transitionFilter smil:dur="${SWEEP_TIME / 1000}s" smil:targetElement="${id}" smil:type="barWipe" smil:subtype="leftToRight"/>`
      : '';
  return (
    `<anim:par smil:begin="0s" smil:fill="hold" presentation:node-type="${node}" ${PRESETS[how]}>` +
    `<anim:set smil:begin="0s" smil:dur="0.001s" smil:fill="hold" smil:targetElement="${id}" smil:attributeName="visibility" smil:to="${shown}"/>${wipe}</anim:par>`
  );
}
