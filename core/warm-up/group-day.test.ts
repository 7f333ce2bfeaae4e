import { expect, it } from 'vitest';
import { drillId, eventId, groupId } from '../ids.ts';
import type { DrillRecord } from '../log/class-state.ts';
import { groupDay, leftBefore } from './group-day.ts';

const shown = [{ id: eventId('e'), at: 1, part: 'visual', place: 0 }] as const;
const ended = { at: 2, complete: true };

function drill(id: string, day: string, some: Partial<DrillRecord> = {}): DrillRecord {
  return {
    id: drillId(id),
    groupId: groupId('g'),
    day,
    drill: {
      seed: 1,
      visual: ['a=AE'],
      auditory: [],
      board: { shape: 'syllable', piles: [] },
      run: [],
      shortfall: null,
    },
    begunBy: [eventId('begun')],
    earlier: [],
    at: 0,
    shown,
    calls: [],
    marks: [],
    corrections: [],
    ended: null,
    ...some,
  };
}

const days: readonly (readonly [string, readonly DrillRecord[], string, string | null])[] = [
  ['nothing yet', [], 'fresh', null],
  ['begun today and left', [drill('one', '2026-11-30')], 'under-way', null],
  ['ended today', [drill('one', '2026-11-30', { ended })], 'done', null],
  ['begun, with nothing shown', [drill('one', '2026-11-30', { shown: [] })], 'fresh', null],
  [
    'done, then begun again',
    [drill('one', '2026-11-30', { ended }), drill('two', '2026-11-30')],
    'under-way',
    null,
  ],
  ['left the day before', [drill('one', '2026-11-27')], 'fresh', 'one'],
  [
    'left the day before, today’s done',
    [drill('one', '2026-11-27'), drill('two', '2026-11-30', { ended })],
    'done',
    null,
  ],
  ['ended the day before', [drill('one', '2026-11-27', { ended })], 'fresh', null],
];

it.each(days)('says how the day stands: %s', (_, drills, kind, left) => {
  expect(groupDay(drills, '2026-11-30').kind).toBe(kind);
  expect(leftBefore(drills, '2026-11-30')?.id ?? null).toBe(left);
});
