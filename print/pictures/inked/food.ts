/** What is eaten. */
import type { PicturePart } from '../../picture.ts';
import { corners, disc, oval } from '../drawn/outlines.ts';
import { box, even, soft, sway } from './lines.ts';
import {
  band,
  brown,
  cream,
  drawn,
  fir,
  flat,
  green,
  inked,
  mist,
  red,
  rose,
  tan,
  yellow,
} from './paint.ts';

export const food: Readonly<Record<string, readonly PicturePart[]>> = {
  apple: [
    inked(
      soft(
        ...even([
          [50, 33, 0.6],
          [38, 26],
          [22, 28],
          [11, 43],
          [14, 66],
          [27, 87],
          [40, 92],
          [50, 89],
        ]),
      ),
      red,
    ),
    flat(soft([20, 52], [22, 40], [32, 35], [28, 44], [26, 56]), rose),
    ...band(sway([50, 36], [50, 24], [56, 11]), brown, 3),
    inked(soft([55, 22, 0], [66, 9], [86, 10, 0], [78, 23], [64, 26]), green),
    drawn(sway([58, 21], [68, 18], [78, 14]), undefined, 2.4),
  ],
  cherry: [
    ...band(sway([32, 56], [38, 34], [62, 10]) + sway([70, 60], [70, 36], [62, 10]), fir, 2.4),
    inked(soft([60, 14, 0], [44, 4], [22, 8], [8, 22, 0], [28, 30], [48, 26]), green),
    drawn(sway([52, 15], [36, 16], [22, 20]), undefined, 2.6),
    inked(
      soft(
        [32, 57, 0.6],
        [22, 52],
        [9, 60],
        [8, 76],
        [18, 90],
        [34, 92],
        [46, 82],
        [48, 66],
        [41, 54],
      ),
      red,
    ),
    inked(
      soft(
        [71, 61, 0.6],
        [60, 55],
        [51, 62],
        [49, 78],
        [58, 91],
        [74, 94],
        [88, 85],
        [90, 68],
        [81, 56],
      ),
      red,
    ),
    flat(soft([15, 72], [18, 64], [25, 60], [22, 68], [19, 76]), rose),
    flat(soft([57, 76], [59, 68], [65, 63], [63, 71], [60, 79]), rose),
  ],
  cake: [
    inked(oval(50, 84, 45, 9), mist),
    inked('M13 42V76C13 84 30 89 50 89S87 84 87 76V42Z', tan),
    drawn('M17 66C24 71 36 74 50 74S76 71 83 66', cream, 6),
    inked(
      'M13 42C13 33 30 27 50 27S87 33 87 42V53Q84 59 80 54Q76 51 73 56Q68 66 63 58Q59 53 54 59Q48 67 43 60Q39 54 35 58Q29 63 26 55Q23 51 20 54Q15 57 13 52Z',
      rose,
    ),
    inked(disc(50, 24, 9.5), red),
    drawn(sway([50, 16], [52, 9], [58, 5])),
    flat(disc(47, 21, 2), rose),
    flat(disc(28, 38, 2.4) + disc(72, 38, 2.4) + disc(36, 45, 2.4) + disc(64, 45, 2.4), yellow),
  ],
  waffle: [
    inked(box(8, 10, 84, 82, 14), '#e2b06c'),
    flat(
      [16, 34.5, 53, 71.5]
        .flatMap((x) => [18, 36, 54, 72].map((y) => box(x, y, 13, 13, 3)))
        .join(''),
      '#b97a34',
    ),
    inked(
      soft(
        [26, 46],
        [34, 32],
        [52, 26],
        [70, 34],
        [76, 50],
        [71, 62, 0.6],
        [69, 72],
        [62, 71],
        [60, 64, 0.6],
        [48, 65],
        [42, 66, 0.6],
        [41, 78],
        [34, 78],
        [33, 64, 0.6],
      ),
      '#a85a20',
    ),
    inked(corners([35, 40], [54, 32], [68, 45], [48, 54]), yellow),
    inked(corners([35, 40], [48, 54], [48, 61], [35, 47]), '#e8b32c'),
    inked(corners([48, 54], [68, 45], [68, 52], [48, 61]), '#e8b32c'),
  ],
};
