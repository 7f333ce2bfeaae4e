import { asPart } from './as-part.ts';
import type { PageMark } from './page.ts';

/** A flat picture: painted outlines in a square of `box` units, from back to front. */
export interface Picture {
  readonly box: number;
  readonly parts: readonly PicturePart[];
}

/** A path in SVG syntax, filled, drawn round, or both. Colors are `#rrggbb`. */
export interface PicturePart {
  readonly path: string;
  readonly fill?: string;
  readonly stroke?: string;
  /** How thick the stroke is, in the picture's units; its ends and corners are round. */
  readonly line?: number;
  /** From 0 to 1; 1 when left out. */
  readonly opacity?: number;
  readonly evenOdd?: boolean;
}

/** Finds the picture of a keyword. */
export type Pictures = ReadonlyMap<string, Picture>;

/** A picture of what `alt` says, `size` mm wide and high, its top left corner at (`x`, `y`). */
export function pictureMarks(
  { box, parts }: Picture,
  {
    x,
    y,
    size,
    alt,
  }: { readonly x: number; readonly y: number; readonly size: number; readonly alt: string },
  grey: boolean,
): readonly PageMark[] {
  const scale = size / box;
  const ink = (color: string) => (grey ? grayOf(color) : color);
  const marks = parts.map(({ path, fill, stroke, line = 0, opacity = 1, evenOdd = false }) => ({
    kind: 'shape' as const,
    path,
    x,
    y,
    scale,
    opacity,
    evenOdd,
    ...(fill ? { fill: ink(fill) } : {}),
    ...(stroke ? { stroke: ink(stroke), line: line * scale, round: true } : {}),
  }));
  return asPart(
    { role: 'Figure', shows: { alt, box: { x, y, width: size, height: size } } },
    marks,
  );
}

/**
 * The gray as light as a color looks: relative luminance by the weights of ITU-R BT.709 over linear
 * light, back in sRGB (IEC 61966-2-1), so that a printer's own conversion makes no two parts alike.
 */
export function grayOf(color: string): string {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(color.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  const light = 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  const value = light <= 0.0031308 ? light * 12.92 : 1.055 * light ** (1 / 2.4) - 0.055;
  const digits = Math.round(value * 255)
    .toString(16)
    .padStart(2, '0');
  return `#${digits}${digits}${digits}`;
}
