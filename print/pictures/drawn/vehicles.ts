/** What drives. */
import { corners, disc, slab, stroke } from './outlines.ts';
import { black, ice, lemon, pale, type Row, red, white } from './paint.ts';

const amber = '#fcb61e';

export const vehicles: Readonly<Record<string, readonly Row[]>> = {
  bus: [
    ['M1 8q0-3 3-3h18q3 0 3 3v6l4 1q2 .600 2 2.600V24H1Z', amber],
    [slab(1, 16, 24, 1.6) + slab(1, 20, 30, 1.4), black],
    [slab(2.6, 8, 4.4, 5.6) + slab(8.2, 8, 4.4, 5.6) + slab(13.8, 8, 4.4, 5.6), ice],
    [slab(19.4, 8, 4.4, 11.6), black],
    [slab(20.2, 8.8, 2.8, 4.6), ice],
    [slab(29, 18.4, 2.2, 2.6), lemon],
    [slab(0.4, 22.6, 31.2, 1.8), '#433b36'],
    [disc(7.5, 24.5, 4.2) + disc(24.5, 24.5, 4.2), black],
    [disc(7.5, 24.5, 2) + disc(24.5, 24.5, 2), pale],
    [disc(3, 4.8, 1) + disc(22.6, 4.8, 1), red],
  ],
  engine: [
    ['M1 17q0-3 3-3h9l1-1.600q5-6 9-6h8q1 0 1 1V26H1Z', red],
    ['M16.500 13.500q3.500-5 7-5H29v5Z', ice],
    ['M2 17.400h12v4.200H2Z', '#321b41'],
    [slab(3.4, 11.6, 8, 8), '#9b9b9b'],
    [
      slab(4.2, 8.6, 1.8, 3) +
        slab(6.6, 8.6, 1.8, 3) +
        slab(9, 8.6, 1.8, 3) +
        slab(3.4, 14.4, 8, 1.1),
      '#433b36',
    ],
    [disc(7.4, 17.4, 1.9), '#433b36'],
    [disc(7.4, 17.4, 0.9), lemon],
    [slab(0.6, 24, 31.4, 2), '#433b36'],
    [disc(9, 26, 4.4) + disc(25, 26, 4.4), black],
    [disc(9, 26, 2.1) + disc(25, 26, 2.1), pale],
    [stroke(1.2, [26, 17.6], [28.6, 17.6]), white],
    [corners([6, 0.4], [9, 0.4], [9, 3.6], [11, 3.6], [7.5, 7.6], [4, 3.6], [6, 3.6]), '#0074ba'],
  ],
};
