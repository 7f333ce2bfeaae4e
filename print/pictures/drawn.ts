/**
 * Pictures drawn for this project, in the same flat style: where the open set has none, or one that a
 * child would call something else. Outlines in a square of 32 units, from back to front.
 */
import type { Picture, PicturePart } from '../picture.ts';
import { figures } from './drawn/figures.ts';
import { food } from './drawn/food.ts';
import { happenings } from './drawn/happenings.ts';
import { kitchen } from './drawn/kitchen.ts';
import { places } from './drawn/places.ts';
import { plants } from './drawn/plants.ts';
import { things } from './drawn/things.ts';

/** The drawn pictures by keyword. */
export const drawn: ReadonlyMap<string, Picture> = new Map(
  Object.entries({
    ...things,
    ...plants,
    ...food,
    ...kitchen,
    ...figures,
    ...places,
    ...happenings,
  }).map(([keyword, parts]): [string, Picture] => [
    keyword,
    { box: 32, parts: parts.map(([path, fill]): PicturePart => ({ path, fill })) },
  ]),
);
