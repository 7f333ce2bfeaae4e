/** What is eaten and drunk. */
import { corners, disc, slab, stroke } from './outlines.ts';
import { carrot, green, lemon, type PaintedOutline, pale, red } from './paint.ts';

export const food: Readonly<Record<string, readonly PaintedOutline[]>> = {
  barbecue: [
    [
      stroke(1.6, [11, 20], [7, 31]) +
        stroke(1.6, [21, 20], [25, 31]) +
        stroke(1.1, [9, 27], [23, 27]),
      '#636363',
    ],
    [
      'M7 14q0-3 2-5q0 2 1.500 3q0-4 2.500-6q0 3 2 4.500q1-3 3-4.500q0 3 2 5q1-1 1.500-2.500q2 2.500 1.500 5.500Z',
      carrot,
    ],
    ['M11 14q.500-2 2-3q1 1.500 2.500 1q1-1 1.500-2q1.500 1.500 2 4Z', lemon],
    ['M3.500 15.500h25q-1 9-12.500 9t-12.500-9Z', red],
    ['M4.500 19q11.500 5 23 0q-2.500 5.500-11.500 5.500T4.500 19Z', '#a3293d'],
    [stroke(1.4, [2.6, 15], [29.4, 15]), '#433b36'],
    [stroke(2.8, [6.5, 12.4], [12.5, 12.4]) + stroke(2.8, [20, 12.4], [26, 12.4]), '#8a4b1f'],
    ['M13.800 13.800v-1.800q0-2.500 2.700-2.500t2.700 2.500v1.800Z', '#d3883e'],
    [slab(13.6, 11.8, 5.8, 1), green],
    [disc(9, 6, 1.6) + disc(11, 3.4, 1.2) + disc(22, 5, 1.6) + disc(20.4, 2, 1.1), pale],
  ],
  juice: [
    [stroke(1.6, [19, 10], [20.5, 2], [26, 1.2]), red],
    [corners([7, 10], [10, 6], [26, 6], [23, 10]), '#533566'],
    [slab(7, 9.8, 16, 21.2), '#6a3fa0'],
    [corners([23, 9.8], [26, 6], [26, 27], [23, 31]), '#452a6e'],
    [disc(15, 20.5, 6.4), '#fff3d6'],
    [
      [
        [12.4, 19],
        [15, 18.4],
        [17.6, 19],
        [13.6, 21.4],
        [16.4, 21.4],
        [15, 24],
      ]
        .map(([x = 0, y = 0]) => disc(x, y, 1.5))
        .join(''),
      '#6a3fa0',
    ],
    ['M15 17.500q0-2.500 3-3q.200 2.600-3 3Z', green],
  ],
  orange: [
    [disc(13, 13.5, 11.5), carrot],
    [
      [
        [6, 10],
        [9, 16],
        [6, 19],
        [12, 20],
        [13, 11],
        [17, 16],
        [18, 8],
        [8, 6.5],
      ]
        .map(([x = 0, y = 0]) => disc(x, y, 0.6))
        .join(''),
      '#c75a12',
    ],
    ['M13 4q1-4 7-3.500q-1.500 4.500-7 3.500Z', green],
    [disc(22.5, 22, 9), '#c75a12'],
    [disc(22.5, 22, 8), '#ffe9c7'],
    [
      [0, 1, 2, 3, 4, 5, 6, 7]
        .map((eighth) => {
          const angle = (eighth * Math.PI) / 4;
          const far = (turn: number, length: number) =>
            [22.5 + length * Math.cos(angle + turn), 22 + length * Math.sin(angle + turn)] as const;
          return corners(
            far(0, 1),
            far(0.33, 6.2),
            far(0.16, 7.1),
            far(-0.16, 7.1),
            far(-0.33, 6.2),
          );
        })
        .join(''),
      carrot,
    ],
  ],
};
