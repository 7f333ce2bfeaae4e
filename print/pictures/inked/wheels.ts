/** What drives and flies. */
import type { PicturePart } from '../../picture.ts';
import { corners, disc } from '../drawn/outlines.ts';
import { box, even, soft, straight, sway } from './lines.ts';
import {
  band,
  bark,
  blue,
  cream,
  drawn,
  flat,
  ink,
  inked,
  mist,
  orange,
  red,
  sky,
  stone,
  white,
  yellow,
} from './paint.ts';

/** A wheel about (`x`, `y`). */
function wheel(x: number, y: number, radius: number): readonly PicturePart[] {
  return [inked(disc(x, y, radius), ink), flat(disc(x, y, radius * 0.5), mist)];
}

export const wheels: Readonly<Record<string, readonly PicturePart[]>> = {
  rocket: [
    inked(
      soft(
        ...even([
          [50, 76, 0],
          [40, 76, 0],
          [38, 83],
          [50, 95, 0],
        ]),
      ),
      orange,
    ),
    flat(
      soft(
        ...even([
          [50, 78],
          [45, 78, 0],
          [45, 82],
          [50, 88, 0],
        ]),
      ),
      yellow,
    ),
    inked(soft([34, 46, 0], [18, 60], [16, 82, 0], [26, 74], [38, 72, 0]), red),
    inked(soft([66, 46, 0], [82, 60], [84, 82, 0], [74, 74], [62, 72, 0]), red),
    inked(
      soft(
        ...even([
          [50, 3, 0.4],
          [37, 18],
          [31, 40],
          [34, 64],
          [39, 76, 0],
        ]),
      ),
      white,
    ),
    inked(soft([50, 3, 0.4], [40, 13], [34.5, 26, 0], [50, 29], [65.5, 26, 0], [60, 13]), red),
    inked(disc(50, 44, 9.5), sky),
    inked(
      soft(
        ...even([
          [50, 56],
          [46, 62],
          [46, 82, 0],
        ]),
      ),
      red,
    ),
  ],
  bus: [
    inked('M5 28Q5 18 15 18H70Q76 18 76 24V46H88Q96 46 96 54V74Q96 76 93 76H8Q5 76 5 73Z', yellow),
    inked(box(13, 27, 14, 16, 2), sky),
    inked(box(31, 27, 14, 16, 2), sky),
    inked(box(52, 27, 16, 49, 2), sky),
    drawn(straight([60, 27], [60, 76])),
    drawn(straight([5, 54], [52, 54]) + straight([5, 62], [52, 62])),
    inked(box(88, 56, 8, 7, 3), cream),
    drawn(straight([2, 74], [98, 74]), ink, 5),
    ...wheel(26, 77, 11),
    ...wheel(77, 77, 11),
  ],
  car: [
    inked('M22 48Q27 24 38 24H60Q70 24 80 48Z', blue),
    inked('M30 47Q33 31 40 31H48V47Z', sky),
    inked('M54 31H59Q65 31 71 47H54Z', sky),
    inked('M4 58Q4 47 14 47H82Q96 49 96 62V70Q96 74 92 74H8Q4 74 4 70Z', blue),
    inked(box(4, 55, 8, 8, 3), red),
    inked(box(87, 55, 9, 8, 3), yellow),
    drawn(straight([51, 47], [51, 68]) + straight([56, 56], [61, 56])),
    ...wheel(26, 74, 13),
    ...wheel(74, 74, 13),
  ],
  wagon: [
    ...band(sway([76, 64], [85, 54], [88, 25]), stone, 3),
    ...band(straight([82, 21], [93, 23]), ink, 2),
    inked(corners([6, 42], [80, 42], [77, 68], [9, 68]), red),
    flat(corners([9, 46], [76, 46], [75.3, 53], [10, 53]), '#ea7a6c'),
    ...band(straight([5, 42], [81, 42]), white, 2.5),
    ...wheel(24, 76, 13),
    ...wheel(62, 76, 13),
  ],
  bike: [
    ...[24, 76].flatMap((x) => [
      drawn(disc(x, 66, 19), ink, 5.6),
      drawn(straight([x - 17, 66], [x + 17, 66]) + straight([x, 49], [x, 83]), stone, 2.2),
      flat(disc(x, 66, 3.4), ink),
    ]),
    ...band(
      straight([24, 66], [37, 38], [64, 38], [48, 66], [24, 66]) + straight([34, 31], [48, 66]),
      red,
      3.2,
    ),
    ...band(straight([76, 66], [62, 26], [74, 20]), red, 3.2),
    drawn(straight([72, 21], [78, 18]), ink, 6.6),
    ...band(straight([27, 29], [42, 29]), bark, 4),
    inked(disc(48, 66, 6), yellow),
    drawn(straight([48, 66], [52, 76]) + straight([48, 77], [57, 77])),
  ],
};
