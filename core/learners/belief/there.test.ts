import { expect, it } from 'vitest';
import { childId, groupId } from '../../ids.ts';
import type { Observation } from '../observation.ts';
import { startTracker } from '../tracker.ts';
import { daysThere, lastThere, timesThere } from './there.ts';

const mina = childId('Mina');
const red = groupId('red');

/** On day 1 Mina reads alone, so that she is known; then her group reads the card on these days, without her where it says so. */
function after(days: readonly (number | `${number} without her`)[]) {
  const { observe, known } = startTracker();
  const one = { groups: [red], task: 'read', right: true, broke: null, heard: null } as const;
  observe({ ...one, day: 1, child: mina, cards: ['m=M'] });
  for (const said of days) {
    const day = Number.parseInt(`${said}`, 10);
    const reading: Observation = { ...one, day, child: null, cards: ['p=P', 'o=AA', 'p=P'] };
    observe(said === day ? reading : { ...reading, away: [mina] });
  }
  const { book } = known;
  const number = book.numberOf('p=P');
  const pair = book.children.get(mina)?.pairs.at(number) ?? -1;
  return { book, pair, row: book.groups.get(red)?.rows.at(number) ?? -1 };
}

// The card is twice in its word: one reading is two times, on one day.
it.each([
  [[2, 3], 4, 2, 3],
  [[2, '3 without her'], 2, 1, 2],
  [[2, '3 without her', '4 without her'], 2, 1, 2],
  [['2 without her', 3, '4 without her'], 2, 1, 3],
  [['2 without her'], 0, 0, Number.NEGATIVE_INFINITY],
  // She went home in the middle of the day: it was practice of hers that morning.
  [[2, 3, '3 without her'], 4, 2, 3],
] as const)(
  'on days %j a child was there %i times, on %i days, last on %d',
  (days, ...expected) => {
    const { book, pair, row } = after(days);
    const found = [
      timesThere(book, pair, row),
      daysThere(book, pair, row),
      lastThere(book, pair, row),
    ];
    expect(found).toEqual(expected);
  },
);

it('of a child that nothing is known of with a card, all that its group did counts', () => {
  const { book, row } = after([2, '3 without her']);
  expect([timesThere(book, -1, row), daysThere(book, -1, row), lastThere(book, -1, row)]).toEqual([
    4, 2, 3,
  ]);
});
