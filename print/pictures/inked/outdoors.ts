/** What is seen out of doors. */
import type { PicturePart } from '../../picture.ts';
import { corners, disc, oval } from '../drawn/outlines.ts';
import { soft, straight, sway, turned } from './lines.ts';
import {
  band,
  bark,
  blue,
  brown,
  cream,
  drawn,
  fir,
  flat,
  green,
  ink,
  inked,
  merged,
  mist,
  orange,
  red,
  sky,
  stone,
  tan,
  white,
  yellow,
} from './paint.ts';

export const outdoors: Readonly<Record<string, readonly PicturePart[]>> = {
  sun: [
    inked(
      Array.from({ length: 10 }, (_, ray) =>
        corners(
          ...turned(
            ray * 36,
            [50, 50],
            [
              [41, 24],
              [50, 5],
              [59, 24],
            ],
          ).map(([x, y]) => [x, y] as const),
        ),
      ).join(''),
      orange,
    ),
    inked(disc(50, 50, 24), yellow),
    flat(soft([34, 50], [37, 38], [48, 32], [42, 40], [39, 50]), cream),
  ],
  nest: [
    inked(oval(31, 47, 14, 19), sky),
    inked(oval(69, 47, 14, 19), sky),
    inked(oval(50, 41, 15, 21), sky),
    flat(
      disc(45, 33, 2.2) + disc(54, 29, 1.8) + disc(54, 40, 2) + disc(28, 42, 2) + disc(72, 41, 2),
      blue,
    ),
    inked(
      soft(
        [5, 50, 0.3],
        [20, 57],
        [50, 61],
        [80, 57],
        [95, 50, 0.3],
        [89, 72],
        [74, 86],
        [50, 90],
        [26, 86],
        [11, 72],
      ),
      tan,
    ),
    drawn(sway([12, 63], [34, 70], [60, 67], [86, 62]), bark, 2.6),
    drawn(sway([17, 74], [40, 78], [66, 74], [85, 70]), bark, 2.6),
    drawn(sway([28, 84], [46, 84], [70, 82]), bark, 2.6),
    drawn(sway([24, 62], [38, 74], [52, 83]), brown, 2.6),
    drawn(sway([76, 62], [64, 73], [58, 84]), brown, 2.6),
    drawn(sway([44, 63], [52, 70], [70, 78]), brown, 2.6),
    drawn(straight([5, 50], [1.8, 42]) + straight([95, 50], [98.2, 44])),
  ],
  tent: [
    drawn(straight([8, 86], [92, 86]), fir, 5),
    inked(corners([42, 20], [73, 27], [93, 84], [66, 84]), red),
    inked(corners([42, 20], [10, 84], [66, 84]), orange),
    inked('M40 46Q36 68 26 84H56Q45 66 40 46Z', ink),
    inked('M40 46Q36 68 26 84H33Q40 66 40 46Z', cream),
    inked('M40 46Q46 68 56 84H49Q41 66 40 46Z', cream),
    drawn(straight([42, 20], [37, 10]) + straight([42, 20], [46, 10])),
  ],
  igloo: [
    flat(oval(50, 84, 46, 7), mist),
    inked('M8 82C8 44 28 20 52 20C76 20 92 44 92 82Z', white),
    drawn('M15 56Q32 50 50 50T88 56'),
    drawn('M26 36Q38 32 52 32T78 36'),
    drawn(`${straight([52, 20], [52, 32])}M36 34Q32 42 31 51M66 33Q71 42 73 51`),
    inked('M26 84V70C26 52 36 44 47 44C60 44 70 54 70 70V84Z', sky),
    inked('M35 84V71C35 60 40 54 48 54C56 54 61 60 61 71V84Z', ink),
    drawn('M27 66L35 68M69 66L61 68M38 47L42 56M58 47L54 56'),
  ],
  leaf: [
    ...band(straight([8, 92], [24, 77]), brown, 3.4),
    inked(
      soft([22, 80], [13, 58], [22, 32], [50, 14], [92, 7, 0], [90, 46], [72, 74], [42, 86]),
      green,
    ),
    drawn(sway([27, 74], [50, 50], [76, 22])),
    drawn(
      sway([38, 62], [36, 48], [40, 36]) +
        sway([54, 46], [53, 36], [57, 26]) +
        sway([38, 62], [52, 66], [64, 62]) +
        sway([54, 46], [66, 48], [77, 44]),
    ),
    flat(soft([22, 60], [25, 44], [34, 30], [32, 42], [28, 62]), '#9ccb74'),
  ],
  feather: [
    inked(
      soft(
        [26, 78],
        [20, 60, 0.6],
        [27, 58, 0],
        [26, 44],
        [34, 32, 0.6],
        [38, 38, 0],
        [46, 22],
        [66, 10],
        [92, 6, 0.4],
        [90, 30],
        [80, 46, 0.6],
        [73, 45, 0],
        [72, 60],
        [58, 72, 0.6],
        [53, 67, 0],
        [42, 80],
      ),
      sky,
    ),
    drawn(sway([6, 95], [24, 76], [50, 46], [80, 18])),
    drawn(
      straight([44, 53], [42, 44]) +
        straight([56, 40], [55, 30]) +
        straight([68, 28.5], [68, 20]) +
        straight([36, 62], [46, 66]) +
        straight([49, 47], [60, 52]) +
        straight([61, 35], [73, 38]),
      blue,
    ),
  ],
  volcano: [
    inked(
      soft(
        [50, 30],
        [38, 26],
        [34, 18],
        [41, 10],
        [50, 12],
        [57, 5],
        [69, 8],
        [72, 17],
        [66, 25],
        [58, 26],
      ),
      mist,
    ),
    inked(
      soft([5, 90, 0], [22, 72], [37, 40, 0], [50, 36], [63, 40, 0], [78, 72], [95, 90, 0]),
      brown,
    ),
    inked(
      soft(
        [37, 40, 0],
        [50, 34],
        [63, 40, 0],
        [67, 52],
        [70, 62],
        [64, 66],
        [59, 58],
        [56, 56],
        [55, 70],
        [50, 80],
        [45, 70],
        [44, 58],
        [40, 56],
        [37, 66],
        [31, 64],
        [33, 50],
      ),
      orange,
    ),
    flat(
      soft([41, 42], [50, 40], [59, 42], [58, 48], [51, 49], [50, 62], [49, 49], [42, 48]),
      yellow,
    ),
    inked(disc(22, 34, 5) + disc(80, 38, 4.5) + disc(27, 18, 4), red),
    drawn(sway([16, 84], [24, 78], [30, 82]) + sway([70, 84], [76, 77], [84, 82])),
  ],
  swing: [
    drawn(straight([4, 92], [96, 92]), fir, 5),
    ...band(straight([22, 14], [8, 90]) + straight([78, 14], [92, 90]), blue, 4.5),
    ...band(straight([22, 14], [30, 90]) + straight([78, 14], [70, 90]), sky, 4.5),
    ...band(straight([14, 13], [86, 13]), blue, 5),
    drawn(straight([40, 17], [40, 66]) + straight([60, 17], [60, 66])),
    ...band(straight([36, 67], [64, 67]), red, 5),
  ],
  fence: [
    flat(
      soft(
        [2, 90, 0],
        [6, 76],
        [20, 80],
        [34, 74],
        [50, 80],
        [66, 74],
        [80, 80],
        [94, 76],
        [98, 90, 0],
      ),
      green,
    ),
    inked(corners([3, 38], [97, 38], [97, 48], [3, 48]), mist),
    inked(corners([3, 64], [97, 64], [97, 74], [3, 74]), mist),
    ...[9, 31, 53, 75].map((x) =>
      inked(corners([x, 90], [x, 26], [x + 8, 14], [x + 16, 26], [x + 16, 90]), white),
    ),
  ],
  statue: [
    inked(corners([28, 72], [72, 72], [72, 88], [28, 88]), mist),
    inked(corners([18, 86], [82, 86], [82, 95], [18, 95]), mist),
    inked(corners([22, 66], [78, 66], [78, 74], [22, 74]), mist),
    ...merged(
      soft([50, 32], [39, 35], [36, 48], [32, 66, 0], [68, 66, 0], [64, 48], [61, 35]),
      sway([60, 38], [74, 34], [84, 24]) + sway([40, 38], [33, 48], [40, 56]),
      stone,
      7,
    ),
    inked(disc(50, 25, 10), stone),
    drawn(sway([46, 40], [46, 52], [42, 64]) + sway([54, 42], [56, 54], [58, 64]), ink, 2.6),
    inked(
      soft([40, 10], [46, 5], [52, 8], [60, 8], [67, 5, 0], [64, 13], [54, 16], [46, 14]),
      blue,
    ),
    flat(disc(45, 9, 1.5), ink),
    drawn(straight([40, 10], [36, 11])),
    flat(disc(46, 25, 1.6) + disc(54, 25, 1.6), ink),
    drawn(sway([46, 30], [50, 31.5], [54, 30]), ink, 2.4),
  ],
  column: [
    inked(corners([32, 24], [68, 24], [70, 80], [30, 80]), white),
    drawn(
      straight([42, 26], [41, 79]) + straight([50, 26], [50, 79]) + straight([58, 26], [59, 79]),
      stone,
      2.6,
    ),
    inked(soft([20, 16, 0], [80, 16, 0], [78, 26], [68, 27, 0.4], [32, 27, 0.4], [22, 26]), mist),
    inked(corners([15, 6], [85, 6], [85, 17], [15, 17]), mist),
    inked(corners([25, 78], [75, 78], [78, 87], [22, 87]), mist),
    inked(corners([14, 86], [86, 86], [86, 95], [14, 95]), mist),
  ],
};
