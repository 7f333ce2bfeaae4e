/** What is worn and used. */
import type { PicturePart } from '../../picture.ts';
import { corners, disc, oval } from '../drawn/outlines.ts';
import { box, even, soft, straight, sway } from './lines.ts';
import {
  band,
  bark,
  blue,
  brown,
  cream,
  drawn,
  flat,
  green,
  ink,
  inked,
  merged,
  mist,
  orange,
  red,
  rose,
  sky,
  stone,
  tan,
  violet,
  white,
  yellow,
} from './paint.ts';

export const home: Readonly<Record<string, readonly PicturePart[]>> = {
  hat: [
    inked(oval(50, 70, 45, 15), yellow),
    inked(
      soft(
        [22, 70, 0],
        [25, 46],
        [36, 23],
        [50, 19],
        [64, 23],
        [75, 46],
        [78, 70, 0],
        [64, 77],
        [50, 78.6],
        [36, 77],
      ),
      yellow,
    ),
    inked(
      soft(
        [23, 56, 0],
        [36, 63],
        [50, 65],
        [64, 63],
        [77, 56, 0],
        [78, 70, 0],
        [64, 77],
        [50, 78.6],
        [36, 77],
        [22, 70, 0],
      ),
      red,
    ),
    flat(soft([33, 46], [38, 31], [48, 25], [44, 34], [40, 48]), cream),
  ],
  map: [
    inked(corners([8, 24], [36, 14], [36, 78], [8, 88]), cream),
    inked(corners([36, 14], [64, 24], [64, 88], [36, 78]), '#f3d79a'),
    inked(corners([64, 24], [92, 14], [92, 78], [64, 88]), cream),
    flat(
      'M9.800 46L34.200 37V48L9.800 58ZM37.800 38L62.200 46V57L37.800 49ZM65.800 45L90.200 30V41L65.800 56Z',
      sky,
    ),
    flat('M9.800 72L34.200 62V77L9.800 85.600Z', green),
    drawn('M36 14V78M64 24V88'),
    ...band(straight([72, 60], [84, 70]) + straight([83, 57], [73, 73]), red, 4),
    drawn('M16 34L20 33M27 30L31 31M40 33L45 36M52 40L56 45M57 52L58 58M62 65L66 69', red),
  ],
  umbrella: [
    drawn(straight([50, 10], [50, 5])),
    ...band(sway([50, 40], [50, 60], [50, 82, 1], [57, 91], [67, 88], [68, 80]), tan, 3),
    inked(
      'M4 54C6 26 26 10 50 10S94 26 96 54Q89 46 81 46T65 54Q58 46 50 46T35 54Q27 46 19 46T4 54Z',
      red,
    ),
    inked('M35 54C35 34 42 18 50 10C58 18 65 34 65 54Q58 46 50 46T35 54Z', yellow),
    flat('M10 44C14 30 24 20 36 15C28 22 23 32 21 42Q15 41 10 44Z', rose),
  ],
  box: [
    inked(corners([16, 42], [50, 31], [38, 15], [4, 27]), tan),
    inked(corners([84, 42], [50, 31], [62, 15], [96, 27]), tan),
    inked(corners([16, 42], [50, 31], [84, 42], [50, 54]), bark),
    inked(corners([16, 42], [50, 54], [50, 94], [16, 80]), tan),
    inked(corners([84, 42], [50, 54], [50, 94], [84, 80]), '#bd8748'),
    inked(corners([16, 42], [50, 54], [38, 69], [3, 56]), '#e9c08a'),
    inked(corners([84, 42], [50, 54], [62, 69], [97, 56]), tan),
  ],
  yarn: [
    ...band(straight([78, 10], [38, 60]), tan, 4),
    ...band(straight([18, 12], [62, 60]), tan, 4),
    inked(disc(79, 9, 5) + disc(17, 11, 5), yellow),
    ...band(sway([56, 82], [72, 90], [84, 82], [95, 90]), red, 3),
    inked(disc(47, 56, 35), red),
    drawn(
      sway([17, 44], [34, 36], [52, 40], [66, 54], [72, 76]) +
        sway([14, 58], [32, 50], [48, 56], [58, 70], [61, 86]) +
        sway([27, 30], [46, 27], [64, 36], [76, 50], [80, 62]),
      ink,
      2.6,
    ),
    drawn(
      sway([16, 68], [28, 64], [40, 72], [46, 90]) + sway([52, 40], [44, 30], [40, 22]),
      ink,
      2.6,
    ),
    drawn(sway([60, 26], [52, 34], [50, 40]), ink, 2.6),
  ],
  kite: [
    drawn(sway([46, 72], [38, 79], [46, 86], [36, 92], [22, 90], [14, 95])),
    inked(soft([46, 86], [52, 80, 0], [56, 90, 0]), yellow),
    inked(soft([46, 86], [40, 80, 0.4], [38, 90, 0.4]), yellow),
    inked(corners([58, 4], [94, 34], [46, 74], [20, 22]), yellow),
    inked(corners([58, 4], [94, 34], [54.5, 27.5]), red),
    inked(corners([58, 4], [20, 22], [54.5, 27.5]), sky),
    inked(corners([46, 74], [94, 34], [54.5, 27.5]), sky),
    inked(corners([46, 74], [20, 22], [54.5, 27.5]), red),
  ],
  bell: [
    drawn(sway([10, 40], [6, 54], [9, 66]) + sway([90, 40], [94, 54], [91, 66])),
    ...band(soft([50, 5], [43, 9], [50, 17], [57, 9]), tan, 1.6),
    inked(disc(50, 84, 10), tan),
    inked(
      soft(
        ...even([
          [50, 14],
          [37, 18],
          [29, 32],
          [26, 54],
          [17, 70],
          [16, 79, 0.4],
          [50, 81],
        ]),
      ),
      yellow,
    ),
    drawn(sway([23, 64], [36, 67], [50, 68], [64, 67], [77, 64])),
    flat(soft([35, 50], [37, 34], [44, 24], [41, 36], [40, 52]), cream),
  ],
  dress: [
    inked(
      'M34 8Q36 24 27 34Q36 42 35 50Q22 68 10 88Q50 100 90 88Q78 68 65 50Q64 42 73 34Q64 24 66 8H57Q56 25 50 25T43 8Z',
      violet,
    ),
    flat(
      disc(28, 78, 3.4) +
        disc(46, 66, 3.4) +
        disc(52, 84, 3.4) +
        disc(66, 70, 3.4) +
        disc(76, 84, 3.4) +
        disc(38, 88, 3.2) +
        disc(42, 36, 3) +
        disc(58, 36, 3),
      cream,
    ),
    inked('M35 44Q50 50 65 44L67 53Q50 60 33 53Z', yellow),
  ],
  puzzle: [
    inked(piece(10, 10, 38, [0, 1, -1, 0]), red),
    inked(piece(48, 10, 38, [0, 0, 1, -1]), yellow),
    inked(piece(10, 48, 38, [1, -1, 0, 0]), sky),
    inked(piece(56, 56, 38, [-1, 0, 0, 1]), green),
  ],
  sock: [
    inked('M34 8H72V50Q72 60 64 66L40 86Q28 95 17 86Q8 76 18 66L33 53Q36 50 36 44Z', sky),
    inked('M32 5H74V20H32Z', yellow),
    drawn(
      straight([42.5, 9], [42.5, 16]) +
        straight([53, 9], [53, 16]) +
        straight([63.5, 9], [63.5, 16]),
      ink,
      2.6,
    ),
    flat('M37.5 27H70.2V35H37.3ZM37 42H70.2V49H35.5Z', blue),
    inked('M17 86Q8 76 18 66L22 62.500Q38 68 40 86Q28 95 17 86Z', yellow),
    inked('M72 44V50Q72 60 64 66L58 71Q52 60 57 52Q63 45 72 44Z', yellow),
  ],
  mitt: [
    ...merged('M32 78V34Q34 8 56 8T82 34V78Z', straight([42, 60], [21, 40]), orange, 18),
    drawn('M48 60Q44 66 38 66', ink),
    drawn(
      sway([44, 26], [58, 34], [73, 40]) +
        sway([44, 42], [58, 48], [74, 54]) +
        sway([72, 22], [60, 34], [46, 46]) +
        sway([76, 42], [66, 50], [56, 60]),
      cream,
      2.6,
    ),
    inked(box(28, 74, 58, 19, 4), cream),
    drawn(sway([80, 88], [91, 92], [93, 82], [86, 80])),
  ],
  salt: [
    flat(oval(50, 92, 36, 5), mist),
    inked('M32 40L22 84Q22 92 32 92H68Q78 92 78 84L68 40Z', sky),
    flat('M29 60L24 84Q24 90.200 32 90.200H68Q76 90.200 76 84L71 60Q60 55 50 60T29 60Z', white),
    drawn(sway([28.6, 60], [40, 56], [50, 60], [60, 64], [71.4, 60])),
    drawn('M32 40L22 84Q22 92 32 92H68Q78 92 78 84L68 40Z'),
    inked('M30 42V30Q30 8 50 8T70 30V42Z', stone),
    drawn(straight([30, 33], [70, 33])),
    flat(disc(50, 17, 2.6) + disc(41, 22, 2.6) + disc(59, 22, 2.6) + disc(50, 26, 2.6), ink),
    flat(
      disc(34, 72, 1.6) +
        disc(46, 70, 1.6) +
        disc(58, 74, 1.6) +
        disc(66, 70, 1.6) +
        disc(40, 80, 1.6) +
        disc(52, 82, 1.6) +
        disc(64, 82, 1.6),
      stone,
    ),
  ],
  medicine: [
    inked('M30 34Q16 38 16 52V84Q16 93 25 93H57Q66 93 66 84V52Q66 38 52 34V24H30Z', brown),
    inked(box(25, 7, 32, 18, 4), white),
    drawn(
      straight([33, 12], [33, 20]) + straight([41, 12], [41, 20]) + straight([49, 12], [49, 20]),
      ink,
      2.6,
    ),
    inked(corners([16, 50], [66, 50], [66, 80], [16, 80]), cream),
    flat('M37 54H45V61H52V69H45V76H37V69H30V61H37Z', blue),
    ...band(straight([84, 12], [84, 62]), stone, 3.4),
    inked(oval(84, 73, 10, 15), stone),
    flat(oval(84, 74, 5.6, 10), brown),
  ],
  circle: [
    {
      path: disc(50, 50, 42) + disc(50, 50, 29),
      fill: orange,
      stroke: ink,
      line: 3.6,
      evenOdd: true,
    },
  ],
  equal: [inked(box(8, 22, 84, 22, 7), blue), inked(box(8, 56, 84, 22, 7), blue)],
  cube: [
    inked(corners([50, 6], [90, 26], [50, 46], [10, 26]), '#ffe08a'),
    inked(corners([10, 26], [50, 46], [50, 94], [10, 72]), yellow),
    inked(corners([90, 26], [50, 46], [50, 94], [90, 72]), orange),
  ],
  tennis: [
    ...band(straight([44, 60], [16, 90]), bark, 5),
    inked(
      soft([57, 8], [76, 14], [82, 32], [73, 52], [56, 62], [40, 60], [32, 44], [38, 22]),
      white,
    ),
    drawn(
      straight([40, 28], [74, 50]) +
        straight([46, 17], [80, 38]) +
        straight([35, 40], [62, 58]) +
        straight([70, 14], [42, 58]) +
        straight([79, 24], [56, 60]) +
        straight([57, 10], [35, 46]),
      stone,
      2.4,
    ),
    drawn(
      soft([57, 8], [76, 14], [82, 32], [73, 52], [56, 62], [40, 60], [32, 44], [38, 22]),
      ink,
      9,
    ),
    drawn(
      soft([57, 8], [76, 14], [82, 32], [73, 52], [56, 62], [40, 60], [32, 44], [38, 22]),
      red,
      3.4,
    ),
    inked(disc(76, 78, 16), yellow),
    drawn(sway([66, 67], [73, 76], [70, 92]) + sway([88, 68], [81, 78], [86, 88]), white, 2.8),
  ],
  robot: [
    drawn(straight([50, 18], [50, 8])),
    inked(disc(50, 8, 5), red),
    inked(box(8, 34, 12, 20, 4), stone),
    inked(box(80, 34, 12, 20, 4), stone),
    inked(corners([42, 66], [58, 66], [58, 76], [42, 76]), stone),
    inked('M20 95V86Q20 74 32 74H68Q80 74 80 86V95Z', sky),
    inked(box(18, 18, 64, 50, 10), sky),
    inked(disc(36, 38, 9) + disc(64, 38, 9), yellow),
    flat(disc(36, 38, 3.8) + disc(64, 38, 3.8), ink),
    inked(box(32, 52, 36, 9, 4), white),
    drawn(
      straight([41, 53], [41, 60]) + straight([50, 53], [50, 60]) + straight([59, 53], [59, 60]),
      ink,
      2.4,
    ),
    inked(disc(40, 85, 3.6), red),
    inked(disc(52, 85, 3.6), green),
  ],
  flute: [
    ...band(straight([16, 84], [80, 20]), stone, 9),
    drawn(straight([68, 26], [74, 32]) + straight([26, 68], [32, 74])),
    drawn(straight([16, 80], [76, 20]), white, 2.4),
    flat(oval(76, 24, 2.8, 2.8), ink),
    ...[0, 1, 2, 3, 4].map((key) => inked(disc(60 - 7.4 * key, 40 + 7.4 * key, 4.2), yellow)),
    drawn(straight([76, 56], [76, 74]) + straight([92, 52], [92, 70])),
    drawn(straight([76, 56], [92, 52]), ink, 5),
    flat(oval(72, 75, 5.6, 4.4) + oval(88, 71, 5.6, 4.4), ink),
    drawn(straight([32, 12], [32, 30]) + sway([32, 12], [37, 18], [41, 22])),
    flat(oval(28, 31, 5.6, 4.4), ink),
  ],
  bone: [
    flat(knobs(14.6), ink),
    ...band(straight([29, 71], [71, 29]), cream, 17),
    flat(knobs(11), cream),
    flat(soft([12, 66], [15, 59], [23, 58], [19, 62], [16, 68]), white),
  ],
};

/** The ends of a bone. */
function knobs(radius: number): string {
  return disc(20, 66, radius) + disc(34, 80, radius) + disc(66, 20, radius) + disc(80, 34, radius);
}

/** A piece of a puzzle, `side` wide, its top left corner at (`x`, `y`); each edge is straight (0), bulges out (1) or in (-1). */
function piece(
  x: number,
  y: number,
  side: number,
  edges: readonly [number, number, number, number],
): string {
  const ways = [
    [1, 0],
    [0, 1],
    [-1, 0],
    [0, -1],
  ] as const;
  let [atX, atY] = [x, y];
  let path = `M${x} ${y}`;
  edges.forEach((out, edge) => {
    const [dx, dy] = ways[edge] as (typeof ways)[number];
    const spot = (along: number, up: number) =>
      `${(atX + side * (along * dx + up * out * dy)).toFixed(2)} ${(atY + side * (along * dy - up * out * dx)).toFixed(2)}`;
    if (out !== 0) {
      path += `L${spot(0.38, 0)}C${spot(0.46, 0.02)} ${spot(0.24, 0.26)} ${spot(0.5, 0.26)}`;
      path += `C${spot(0.76, 0.26)} ${spot(0.54, 0.02)} ${spot(0.62, 0)}`;
    }
    path += `L${spot(1, 0)}`;
    atX += side * dx;
    atY += side * dy;
  });
  return `${path}Z`;
}
