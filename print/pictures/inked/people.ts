/** People and what belongs to them. */
import type { PicturePart } from '../../picture.ts';
import { corners, disc, oval } from '../drawn/outlines.ts';
import { box, even, soft, straight, sway } from './lines.ts';
import {
  band,
  bark,
  blue,
  cream,
  drawn,
  flat,
  green,
  ink,
  inked,
  merged,
  red,
  rose,
  tan,
  violet,
  white,
  yellow,
} from './paint.ts';

export const people: Readonly<Record<string, readonly PicturePart[]>> = {
  nose: [
    inked(
      soft(
        ...even([
          [50, 6],
          [40, 10],
          [38, 34],
          [31, 52],
          [15, 62],
          [10, 76],
          [18, 88],
          [32, 86],
          [42, 90],
          [50, 93],
        ]),
      ),
      tan,
    ),
    flat(soft([46, 20], [45, 40], [43, 56], [49, 60], [52, 40], [51, 18]), '#edc794'),
    flat(oval(31, 79, 8, 5) + oval(69, 79, 8, 5), bark),
    drawn(sway([22, 64], [17, 70], [19, 78]) + sway([78, 64], [83, 70], [81, 78])),
  ],
  queen: [
    inked(soft([10, 96, 0], [16, 80], [32, 72], [50, 72], [68, 72], [84, 80], [90, 96, 0]), violet),
    inked(
      soft(
        ...even([
          [50, 26],
          [30, 30],
          [21, 46],
          [20, 64],
          [12, 74],
          [24, 80],
          [38, 78],
          [50, 78],
        ]),
      ),
      bark,
    ),
    inked(corners([40, 66], [40, 78], [50, 88], [60, 78], [60, 66]), tan),
    inked(
      soft([50, 36], [34, 40], [31, 54], [37, 68], [50, 74], [63, 68], [69, 54], [66, 40]),
      tan,
    ),
    flat(
      soft([33, 50], [34, 38], [50, 34], [66, 38], [67, 50], [60, 42], [50, 40], [40, 42]),
      bark,
    ),
    drawn(sway([33, 50], [40, 42], [50, 40], [60, 42], [67, 50])),
    inked(corners([26, 32], [22, 8], [37, 19], [50, 5], [63, 19], [78, 8], [74, 32]), yellow),
    drawn(straight([27, 25], [73, 25]), ink, 2.4),
    flat(disc(50, 18, 3.4), red),
    flat(disc(36, 21, 0.1) + disc(64, 21, 0.1), red),
    flat(disc(43, 54, 3) + disc(57, 54, 3), ink),
    drawn(sway([44, 64], [50, 67.5], [56, 64])),
    flat(disc(37, 60, 2.6) + disc(63, 60, 2.6), rose),
    drawn(sway([37, 76], [43, 84], [50, 87], [57, 84], [63, 76]), cream, 3.4),
    inked(disc(50, 90, 4), yellow),
  ],
  thumb: [
    inked(box(8, 46, 16, 46, 4), blue),
    inked(
      'M24 52L40 44H82Q90 45 90 51T84 57Q93 58 93 64T85 70Q92 71 91 77T82 82Q87 83 86 88T78 93H40Q32 93 24 88Z',
      tan,
    ),
    drawn(
      straight([66, 57], [84, 57]) + straight([66, 70], [85, 70]) + straight([66, 82], [82, 82]),
    ),
    flat('M26 54L42 46Q46 50 58 50L50 66L38 70L26 66Z', tan),
    inked(
      soft(
        [30, 60, 0],
        [39, 44],
        [42, 26],
        [44, 12],
        [52, 5],
        [61, 10],
        [63, 24],
        [61, 38],
        [58, 50],
        [49, 64],
        [37, 69, 0],
        [30, 66],
      ),
      tan,
    ),
    flat('M26 56L33 52L39 66L30 72L26 70Z', tan),
    inked(soft([47, 14], [52, 9], [58, 13], [59, 22], [53, 25], [48, 22]), cream),
    drawn(sway([48, 38], [54, 36], [58, 38]), undefined, 2.4),
    drawn(
      straight([32, 10], [26, 5]) +
        straight([30, 22], [22, 21]) +
        straight([74, 10], [80, 5]) +
        straight([76, 22], [84, 21]),
      red,
    ),
  ],
  giant: [
    ...band(straight([42, 66], [42, 88]) + straight([58, 66], [58, 88]), blue, 9),
    drawn(straight([34, 91], [43, 91]) + straight([57, 91], [66, 91]), bark, 7),
    ...merged(
      'M34 36Q50 30 66 36L64 68H36Z',
      sway([37, 40], [25, 46], [22, 58]) + sway([63, 40], [75, 38], [80, 26]),
      green,
      8,
    ),
    inked(disc(22, 61, 4.6) + disc(81, 22, 4.6), tan),
    inked(corners([36, 58], [64, 58], [64, 66], [36, 66]), bark),
    inked(disc(50, 20, 15), tan),
    inked(
      soft([36, 24, 0], [42, 28], [50, 26], [58, 28], [64, 24, 0], [60, 36], [50, 40], [40, 36]),
      bark,
    ),
    inked(soft([35, 18, 0], [36, 8], [50, 3], [64, 8], [65, 18, 0], [58, 12], [44, 12]), bark),
    flat(disc(45, 19, 2) + disc(55, 19, 2), ink),
    drawn(sway([45, 29], [50, 31.5], [55, 29]), white, 2.4),
    inked(corners([6, 80], [22, 80], [22, 94], [6, 94]), cream),
    inked(corners([3, 81], [14, 70], [25, 81]), red),
    inked(corners([75, 82], [89, 82], [89, 94], [75, 94]), cream),
    inked(corners([72, 83], [82, 73], [92, 83]), red),
    flat(
      corners([12, 86], [16, 86], [16, 92.2], [12, 92.2]) +
        corners([80, 87], [84, 87], [84, 92.2], [80, 92.2]),
      ink,
    ),
  ],
};
