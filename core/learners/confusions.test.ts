import { expect, it } from 'vitest';
import { childId, groupId } from '../ids.ts';
import { countConfusions } from './confusions.ts';
import type { Observation } from './observation.ts';

const wrong: Observation = {
  day: 1,
  child: childId('Mina'),
  groups: [groupId('g')],
  task: 'read',
  cards: ['p=P', 'i=IH', 'n=N'],
  right: false,
  broke: 2,
  heard: 'EH',
};

it('counts what was heard for which card, most often first', () => {
  const rows = [wrong, { ...wrong, child: null, broke: 3, heard: 'M' }, wrong];
  expect(countConfusions(rows)).toEqual([
    { child: 'Mina', card: 'i=IH', heard: 'EH', count: 2 },
    { child: null, card: 'n=N', heard: 'M', count: 1 },
  ]);
});

it('does not count what is not known: which card, what was heard, or that it broke at all', () => {
  const rows = [
    { ...wrong, broke: null },
    { ...wrong, heard: null },
    { ...wrong, right: true },
  ];
  expect(countConfusions(rows)).toEqual([]);
  expect(countConfusions([{ ...wrong, cards: ['i=IH'], broke: null }])[0]?.card).toBe('i=IH');
});

it('names what was heard most often first, whenever it was heard, and by card where it was as often', () => {
  const ofN = { ...wrong, broke: 3, heard: 'M' };
  const ofP = { ...wrong, broke: 1, heard: 'B' };
  const rows = countConfusions([ofP, ofN, wrong, wrong]);
  expect(rows.map(({ card, count }) => [card, count])).toEqual([
    ['i=IH', 2],
    ['n=N', 1],
    ['p=P', 1],
  ]);
});
