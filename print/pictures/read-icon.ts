/**
 * Reads the body of an SVG icon into painted outlines: paths and circles with a plain fill, as flat
 * icons are made of. Anything else throws, so that nothing is dropped in silence.
 */
import type { Picture, PicturePart } from '../picture.ts';

const BOX = 32;

/** The picture of an icon in a square of 32 units. */
export function readIcon(name: string, body: string): Picture {
  const parts: PicturePart[] = [];
  for (const [, tag = '', text = ''] of body.matchAll(/<(\w+)([^>]*?)\/?>/g)) {
    const read = new Map(
      [...text.matchAll(/([\w-]+)="([^"]*)"/g)].map(([, key = '', value = '']) => [key, value]),
    );
    const unknown = [...read.keys()].filter((key) => !known.has(key));
    if (unknown.length > 0) throw new Error(`${name}: ${tag} has ${unknown.join(', ')}.`);
    if (tag === 'g') continue;
    const fill = fillOf(name, read.get('fill'));
    const opacity = Number(read.get('opacity') ?? 1);
    parts.push({
      path: pathOf(name, tag, read),
      fill,
      ...(opacity < 1 ? { opacity } : {}),
      ...(read.get('fill-rule') === 'evenodd' ? { evenOdd: true } : {}),
    });
  }
  return { box: BOX, parts };
}

const known = new Set(['fill', 'd', 'cx', 'cy', 'r', 'opacity', 'fill-rule', 'clip-rule']);

function pathOf(name: string, tag: string, read: ReadonlyMap<string, string>): string {
  if (tag === 'path') return read.get('d') ?? '';
  if (tag !== 'circle') throw new Error(`${name}: cannot read <${tag}>.`);
  const [x, y, r] = ['cx', 'cy', 'r'].map((key) => Number(read.get(key))) as [
    number,
    number,
    number,
  ];
  return `M${x - r} ${y}a${r} ${r} 0 1 1 ${2 * r} 0a${r} ${r} 0 1 1 ${-2 * r} 0Z`;
}

function fillOf(name: string, fill: string | undefined): string {
  const short = /^#([0-9a-f])([0-9a-f])([0-9a-f])$/i.exec(fill ?? '');
  const long = short
    ? `#${short
        .slice(1)
        .map((digit) => digit + digit)
        .join('')}`
    : fill;
  if (!long || !/^#[0-9a-f]{6}$/i.test(long)) throw new Error(`${name}: cannot read fill ${fill}.`);
  return long.toLowerCase();
}
