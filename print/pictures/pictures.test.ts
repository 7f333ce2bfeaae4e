import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { correspondenceById } from '../../core/language/correspondences.ts';
import { SEQUENCE } from '../../core/sequence/built-in.ts';
import { boundsOf } from '../outline.ts';
import { grayOf, type Picture } from '../picture.ts';
import { drawn } from './drawn.ts';
import { iconOf } from './icons.ts';
import { inkedPictures } from './inked.ts';
import { makePictures } from './make-pictures.ts';
import { plainPath } from './plain-path.ts';
import { readIcon } from './read-icon.ts';

const { resolve } = createRequire(import.meta.url);
const set = JSON.parse(readFileSync(resolve('@iconify-json/fluent-emoji-flat/icons.json'), 'utf8'));
const text = readFileSync(new URL('./pictures.json', import.meta.url), 'utf8');
const built = JSON.parse(text) as Record<string, Picture>;

describe('pictures of keywords', () => {
  it('are what the build step makes of the set and the drawings', () => {
    expect(built).toEqual(makePictures(set));
  });

  it('are of our own hand for every keyword of kindergarten, and for at least the first forty', () => {
    const keywords = SEQUENCE.steps
      .flatMap((step) => step.items.map((item) => ({ item, grade: step.grade })))
      .flatMap(({ item, grade }) => {
        const keyword = item.kind === 'card' ? correspondenceById.get(item.id)?.keyword : null;
        return keyword ? [{ keyword, grade }] : [];
      });
    const first = keywords.filter(({ grade }, at) => grade === 'K' || at < 40);
    expect(first.length).toBeGreaterThanOrEqual(40);
    expect(first.filter(({ keyword }) => !inkedPictures.has(keyword))).toEqual([]);
  });

  it('are each made in one place', () => {
    const made = [...iconOf.keys(), ...drawn.keys(), ...inkedPictures.keys()];
    expect(made.filter((keyword, at) => made.indexOf(keyword) < at)).toEqual([]);
  });

  it('are of a keyword that some card has', () => {
    const keywords = new Set([...correspondenceById.values()].map(({ keyword }) => keyword));
    expect(Object.keys(built).filter((keyword) => !keywords.has(keyword))).toEqual([]);
  });

  it('are missing for the keywords that the page on paper lists, and for no other', () => {
    const page = readFileSync(new URL('../../docs/print.md', import.meta.url), 'utf8');
    const [, count, list = ''] = /(\d+) keywords have none[^\n]*\n\n([^\n]*)\./.exec(page) ?? [];
    const keywords = [...correspondenceById.values()].flatMap(({ keyword }) => keyword ?? []);
    const missing = [...new Set(keywords)].filter((keyword) => !(keyword in built)).sort();
    expect(list.split(', ')).toEqual(missing);
    expect(Number(count)).toBe(missing.length);
  });

  it('keep their ink in their box, and the control points of their curves within a 64th of its side', () => {
    const outside = Object.entries(built).filter(([, { box, parts }]) =>
      parts.some(({ path, stroke, line = 0 }) => {
        const ink = boundsOf(plainPath(path));
        const slack = (0.5 * box) / 32 - (stroke ? line / 2 : 0);
        return ink && Math.min(ink.left, ink.top, box - ink.right, box - ink.bottom) < -slack;
      }),
    );
    expect(outside.map(([keyword]) => keyword)).toEqual([]);
  });

  it('have no arcs and no short forms, which painters read differently', () => {
    const commands = Object.values(built).flatMap(({ parts }) =>
      parts.flatMap(({ path }) => path.match(/[a-z]/gi) ?? []),
    );
    expect([...new Set(commands)].sort()).toEqual(['c', 'l', 'm', 'z']);
  });

  it('are never dropped in part: what cannot be read is refused', () => {
    expect(() => readIcon('x', '<path fill="url(#a)" d="M0 0"/>')).toThrow('fill');
    expect(() => readIcon('x', '<rect fill="#fff" width="3"/>')).toThrow('width');
    expect(() => readIcon('x', '<path fill="#fff" transform="scale(2)" d="M0 0"/>')).toThrow();
  });
});

describe('a gray for a color', () => {
  // The relative luminances of the sRGB primaries are the weights of ITU-R BT.709.
  it.each([
    ['#ff0000', 0.2126],
    ['#00ff00', 0.7152],
    ['#0000ff', 0.0722],
    ['#ffffff', 1],
    ['#000000', 0],
  ])('%s is as light as it looks', (color, luminance) => {
    const value = Number.parseInt(grayOf(color).slice(1, 3), 16) / 255;
    const linear = value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
    expect(linear).toBeCloseTo(luminance, 2);
  });
});
