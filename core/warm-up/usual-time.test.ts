import { expect, it } from 'vitest';
import { drillId, eventId, groupId } from '../ids.ts';
import type { DrillRecord } from '../log/class-state.ts';
import { usualSeconds } from './usual-time.ts';

/** A warm-up whose words came after these waits, in seconds; it ended after the last. */
function drill(id: string, waits: readonly number[]): DrillRecord {
  const times = [0];
  for (const wait of waits) times.push((times.at(-1) as number) + wait * 1000);
  return {
    id: drillId(id),
    groupId: groupId('g'),
    day: '2026-11-30',
    drill: {
      seed: 1,
      visual: [],
      auditory: [],
      board: { shape: 'syllable', piles: [] },
      run: [],
      shortfall: null,
    },
    begunBy: [eventId('begun')],
    earlier: [],
    at: 0,
    shown: times
      .slice(0, -1)
      .map((at, place) => ({ id: eventId(`${at}`), at, part: 'blending', place })),
    calls: [],
    marks: [],
    corrections: [],
    ended: { at: times.at(-1) as number, complete: true },
  };
}

const cases: readonly (readonly [string, readonly (readonly number[])[], number | undefined])[] = [
  ['one warm-up is too few to say', [[10, 10, 10]], undefined],
  [
    'the mean of each, the middle of all',
    [
      [10, 12, 14],
      [8, 8, 8],
      [20, 20, 20],
    ],
    12,
  ],
  [
    'of two, half way',
    [
      [10, 10, 10],
      [14, 14, 14],
    ],
    12,
  ],
  [
    'a fire bell is not reading',
    [
      [10, 10, 900, 10],
      [10, 10, 10],
    ],
    10,
  ],
  ['a warm-up hardly begun does not count', [[50], [10, 10, 10], [10, 10, 10]], 10],
];

it.each(cases)('%s', (_, all, seconds) => {
  const usual = usualSeconds(all.map((waits, at) => drill(`${at}`, waits)));
  expect(usual.get('blending')).toBe(seconds);
  expect(usual.has('visual')).toBe(false);
});
