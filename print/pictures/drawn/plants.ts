/** Plants and what they bear. */
import { dark, type PaintedOutline, wood } from './paint.ts';

export const plants: Readonly<Record<string, readonly PaintedOutline[]>> = {
  acorn: [
    ['M8 14h16c0 8-5 13-8 15c-3-2-8-7-8-15Z', '#d3883e'],
    ['M10 14h3c0 6 1 10 3 14c-4-3-6-8-6-14Z', '#e8a95f'],
    ['M15 3q1-1 2 0v5h-2Z', dark],
    ['M6 14c0-5 4-8 10-8s10 3 10 8q0 2-2 2H8q-2 0-2-2Z', wood],
    ['M9 11h14v1.4H9ZM7 14h18v1.2H7Z', dark],
  ],
};
