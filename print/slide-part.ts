/**
 * One slide as a part of a presentation (PresentationML, ECMA-376 part 1, §19.3): its title above the
 * edge, where no one in the room sees it, things as groups of outlines, and what clicks move.
 */
import type { OutlineStep } from './glyphs.ts';
import { boundsOf } from './outline.ts';
import { SLIDE_GROUND, type Slide, type SlideShape, type SlideThing } from './slide.ts';
import { slideTiming } from './slide-timing.ts';
import { escaped } from './xml.ts';

/** The number by which a slide's title finds its place in the layout. */
const TITLE_PLACE = 100;

/** English Metric Units, 36,000 to a millimetre: the unit of every length in the file. */
const EMU = 36000;

/** The XML of a slide; `width` in mm is that of its title. */
export function slidePart({ title, things, clicks }: Slide, width: number): string {
  const ids: number[] = [];
  let id = 2;
  const groups = things.map((thing) => {
    id += 1;
    ids.push(id);
    const xml = groupXml(thing, id);
    id += thing.shapes.length;
    return xml;
  });
  return (
    '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>' +
    '<p:sld xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships" xmlns:p="http://schemas.openxmlformats.org/presentationml/2006/main">' +
    `<p:cSld name="${escaped(title)}"><p:bg><p:bgPr>${solid(SLIDE_GROUND)}<a:effectLst/></p:bgPr></p:bg>` +
    `<p:spTree><p:nvGrpSpPr><p:cNvPr id="1" name=""/><p:cNvGrpSpPr/><p:nvPr/></p:nvGrpSpPr>${groupFrame(0, 0, 0, 0)}` +
    `${titleXml(title, width)}${groups.join('')}</p:spTree></p:cSld>` +
    `<p:clrMapOvr><a:masterClrMapping/></p:clrMapOvr>${slideTiming(clicks, (thing) => ids[thing] as number)}</p:sld>`
  );
}

function titleXml(title: string, width: number): string {
  const [cx, cy] = [Math.round(width * EMU), 15 * EMU];
  return (
    `<p:sp><p:nvSpPr><p:cNvPr id="2" name="Title"/><p:cNvSpPr><a:spLocks noGrp="1"/></p:cNvSpPr><p:nvPr><p:ph type="title" idx="${TITLE_PLACE}"/></p:nvPr></p:nvSpPr>` +
    `<p:spPr><a:xfrm><a:off x="0" y="${-cy - 5 * EMU}"/><a:ext cx="${cx}" cy="${cy}"/></a:xfrm></p:spPr>` +
    `<p:txBody><a:bodyPr><a:normAutofit/></a:bodyPr><a:lstStyle/><a:p><a:r><a:rPr lang="en-US" sz="1800"/><a:t>${escaped(title)}</a:t></a:r></a:p></p:txBody></p:sp>`
  );
}

/** The mark by which programs know that nothing need be said of an object (a common extension of the standard). */
const DECORATIVE =
  '<a:extLst><a:ext uri="{C183D7F6-B498-43B3-948B-1728B52AA6E4}"><adec:decorative xmlns:adec="http://schemas.microsoft.com/office/drawing/2017/decorative" val="1"/></a:ext></a:extLst>';

/** A thing as a group, so that it is read and moved as one. */
function groupXml({ name, says, shapes }: SlideThing, id: number): string {
  const bounds = boundsOf(shapes.flatMap(({ steps }) => steps));
  if (!bounds) throw new Error(`The ${name} has no outline.`);
  const { left, top, right, bottom } = bounds;
  const described =
    says === null
      ? `<p:cNvPr id="${id}" name="${escaped(name)}">${DECORATIVE}</p:cNvPr>`
      : `<p:cNvPr id="${id}" name="${escaped(name)}" descr="${escaped(says)}"/>`;
  return (
    `<p:grpSp><p:nvGrpSpPr>${described}<p:cNvGrpSpPr/><p:nvPr/></p:nvGrpSpPr>${groupFrame(left, top, right - left, bottom - top)}` +
    `${shapes.map((shape, at) => shapeXml(shape, id + 1 + at, name)).join('')}</p:grpSp>`
  );
}

function groupFrame(left: number, top: number, width: number, height: number): string {
  const [x, y, cx, cy] = [left, top, width, height].map((mm) => Math.round(mm * EMU));
  const at = `x="${x}" y="${y}"`;
  const size = `cx="${cx}" cy="${cy}"`;
  return `<p:grpSpPr><a:xfrm><a:off ${at}/><a:ext ${size}/><a:chOff ${at}/><a:chExt ${size}/></a:xfrm></p:grpSpPr>`;
}

function shapeXml(shape: SlideShape, id: number, name: string): string {
  const bounds = boundsOf(shape.steps);
  if (!bounds) throw new Error(`A shape of the ${name} has no outline.`);
  const { left, top, right, bottom } = bounds;
  const [x, y] = [Math.round(left * EMU), Math.round(top * EMU)];
  const size = [right - left, bottom - top].map((mm) => Math.max(1, Math.round(mm * EMU)));
  const { fill, stroke, line = 0, dashed } = shape;
  const point = (px: number, py: number) =>
    `<a:pt x="${Math.round(px * EMU) - x}" y="${Math.round(py * EMU) - y}"/>`;
  const stroked = stroke
    ? `<a:ln w="${Math.round(line * EMU)}">${solid(stroke)}${dashed ? '<a:prstDash val="dash"/>' : ''}</a:ln>`
    : '<a:ln><a:noFill/></a:ln>';
  return (
    `<p:sp><p:nvSpPr><p:cNvPr id="${id}" name="${escaped(name)}"/><p:cNvSpPr/><p:nvPr/></p:nvSpPr><p:spPr>` +
    `<a:xfrm><a:off x="${x}" y="${y}"/><a:ext cx="${size[0]}" cy="${size[1]}"/></a:xfrm>` +
    `<a:custGeom><a:avLst/><a:gdLst/><a:ahLst/><a:cxnLst/><a:rect l="0" t="0" r="r" b="b"/><a:pathLst><a:path w="${size[0]}" h="${size[1]}">` +
    `${shape.steps.map((step) => stepXml(step, point)).join('')}</a:path></a:pathLst></a:custGeom>` +
    `${fill ? solid(fill) : '<a:noFill/>'}${stroked}</p:spPr></p:sp>`
  );
}

function stepXml(step: OutlineStep, point: (x: number, y: number) => string): string {
  switch (step.kind) {
    case 'close':
      return '<a:close/>';
    case 'move':
      return `<a:moveTo>${point(step.x, step.y)}</a:moveTo>`;
    case 'line':
      return `<a:lnTo>${point(step.x, step.y)}</a:lnTo>`;
    case 'quadratic':
      return `<a:quadBezTo>${point(step.x1, step.y1)}${point(step.x, step.y)}</a:quadBezTo>`;
    case 'cubic':
      return `<a:cubicBezTo>${point(step.x1, step.y1)}${point(step.x2, step.y2)}${point(step.x, step.y)}</a:cubicBezTo>`;
  }
}

function solid(color: string): string {
  return `<a:solidFill><a:srgbClr val="${color.slice(1).toUpperCase()}"/></a:solidFill>`;
}
