import type { PicturePart } from '../../picture.ts';

/** One painted outline of a drawing: an SVG path in a square of 32 units, and its color. */
export type PaintedOutline = readonly [path: PicturePart['path'], fill: PicturePart['fill']];

export const wood = '#a56953';
export const dark = '#6d4534';
export const steel = '#9b9b9b';
export const pale = '#d3d3d3';
export const white = '#ffffff';
export const snow = '#e1f0fb';
export const ice = '#b4d9f2';
export const blue = '#0074ba';
export const green = '#44911b';
export const leaf = '#86d72f';
export const skin = '#ffc83d';
export const brown = '#a5693f';
export const lemon = '#fcd53f';
export const carrot = '#ff822d';
export const red = '#f8312f';
export const black = '#321b41';
