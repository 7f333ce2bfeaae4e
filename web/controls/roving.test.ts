import { describe, expect, it } from 'vitest';
import { gridOf, leadsTo, type RovingPlace } from './roving.ts';

/** Two rows of three and one of two: 0 1 2 / 3 4 5 / 6 7. */
const places = gridOf(3, 3).slice(0, 8);

describe('leadsTo', () => {
  it.each<[key: string, from: number, to: number | null]>([
    ['ArrowRight', 0, 1],
    ['ArrowRight', 2, 2],
    ['ArrowLeft', 4, 3],
    ['ArrowLeft', 3, 3],
    ['ArrowDown', 1, 4],
    ['ArrowDown', 5, 7],
    ['ArrowDown', 6, 6],
    ['ArrowUp', 7, 4],
    ['ArrowUp', 0, 0],
    ['Home', 5, 3],
    ['End', 3, 5],
    ['End', 6, 7],
    ['Enter', 3, null],
    ['x', 3, null],
  ])('%s leads from %i to %s', (key, from, to) => {
    expect(leadsTo(key, from, places)).toBe(to);
  });

  it('goes on into the next row where rows are read on', () => {
    expect(leadsTo('ArrowRight', 2, places, { wraps: true })).toBe(3);
    expect(leadsTo('ArrowLeft', 3, places, { wraps: true })).toBe(2);
    expect(leadsTo('ArrowRight', 7, places, { wraps: true })).toBe(7);
    expect(leadsTo('Home', 4, places, { wraps: true })).toBe(3);
  });

  it('goes along one row by any arrow where there is but one', () => {
    const line = gridOf(1, 3);
    expect(leadsTo('ArrowDown', 0, line, { inLine: true })).toBe(1);
    expect(leadsTo('ArrowUp', 2, line, { inLine: true })).toBe(1);
    expect(leadsTo('ArrowDown', 2, line, { inLine: true })).toBe(2);
  });

  it('comes to the first of several things in one place, and to each of them along the row', () => {
    const cards: readonly RovingPlace[] = [
      { row: 0, column: 0 },
      { row: 0, column: 0 },
      { row: 0, column: 1 },
      { row: 1, column: 0 },
      { row: 1, column: 0 },
      { row: 1, column: 1 },
    ];
    expect(leadsTo('ArrowRight', 0, cards)).toBe(1);
    expect(leadsTo('ArrowDown', 1, cards)).toBe(3);
    expect(leadsTo('ArrowUp', 4, cards)).toBe(0);
    expect(leadsTo('ArrowUp', 5, cards)).toBe(2);
  });

  it('leads nowhere from what is not among them', () => {
    expect(leadsTo('ArrowRight', 0, [])).toBeNull();
  });
});
