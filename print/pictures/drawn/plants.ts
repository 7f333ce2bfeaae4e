/** Plants and what they bear. */
import { dark, green, leaf, type Row, wood } from './paint.ts';

export const plants: Readonly<Record<string, readonly Row[]>> = {
  acorn: [
    ['M8 14h16c0 8-5 13-8 15c-3-2-8-7-8-15Z', '#d3883e'],
    ['M10 14h3c0 6 1 10 3 14c-4-3-6-8-6-14Z', '#e8a95f'],
    ['M15 3q1-1 2 0v5h-2Z', dark],
    ['M6 14c0-5 4-8 10-8s10 3 10 8q0 2-2 2H8q-2 0-2-2Z', wood],
    ['M9 11h14v1.4H9ZM7 14h18v1.2H7Z', dark],
  ],
  fern: [
    ['M15 30C15 20 16 12 18 3l1.600.400C17.500 12 17 20 17 30Z', green],
    [
      'M18 6q-6-3-8 1q4 4 8 1ZM17 11q-7-4-10 1q5 5 10 1ZM16.500 17q-8-4-11 2q6 5 11 .500ZM16 23q-7-3-9.500 2q5 5 9.500.500Z',
      leaf,
    ],
    [
      'M18.500 6q6-1 7 3q-5 3-7.500 0ZM17.500 11q8-1 9 4q-6 4-9.500 0ZM17 17q8-1 9.500 5q-6 4-10-1ZM16.800 23q7-1 8.500 4q-5 4-9-1Z',
      '#6dbf2a',
    ],
  ],
};
