/**
 * The pictures of the first keywords, all drawn for this project by one hand: an ink line of one
 * thickness with round corners, few flat colors of one palette, the thing alone in the middle. In a
 * square of 100 units, from back to front.
 */
import type { Picture } from '../picture.ts';
import { animals } from './inked/animals.ts';
import { food } from './inked/food.ts';
import { home } from './inked/home.ts';
import { outdoors } from './inked/outdoors.ts';
import { people } from './inked/people.ts';
import { wheels } from './inked/wheels.ts';

/** The inked pictures by keyword. */
export const inkedPictures: ReadonlyMap<string, Picture> = new Map(
  Object.entries({ ...outdoors, ...animals, ...food, ...home, ...people, ...wheels }).map(
    ([keyword, parts]): [string, Picture] => [keyword, { box: 100, parts }],
  ),
);
