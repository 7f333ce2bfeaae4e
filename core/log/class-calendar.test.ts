import { expect, it } from 'vitest';
import { childId, classId, eventId } from '../ids.ts';
import { readCalendar } from './class-calendar.ts';
import type { CalendarEvent } from './event.ts';

type Said = Pick<CalendarEvent, 'kind' | 'body'>;
const off = (first: string, last: string, holds = true): Said => ({
  kind: 'no-school',
  body: { first, last, holds },
});
const away = (child: string, day: string, isAway = true): Said => ({
  kind: 'away',
  body: { child: childId(child), day, away: isAway },
});

it.each<[string, readonly Said[], readonly string[], Readonly<Record<string, readonly string[]>>]>([
  ['nothing', [], [], {}],
  [
    'breaks in the order of their days, each once',
    [
      off('2027-01-18', '2027-01-18'),
      off('2026-12-21', '2027-01-01'),
      off('2026-12-21', '2027-01-01'),
    ],
    ['2026-12-21 2027-01-01', '2027-01-18 2027-01-18'],
    {},
  ],
  [
    'no break that was taken out, and one that was put in again',
    [off('a', 'b'), off('a', 'b', false), off('c', 'd'), off('c', 'd', false), off('c', 'd')],
    ['c d'],
    {},
  ],
  [
    'who was away on which day, and not who has come',
    [
      away('wren', '2026-12-02'),
      away('tam', '2026-12-02'),
      away('tam', '2026-12-01'),
      away('tam', '2026-12-01', false),
    ],
    [],
    { '2026-12-02': ['tam', 'wren'] },
  ],
])('%s', (_, said, breaks, absences) => {
  const events = said.map((one, n) => ({
    id: eventId(`e${n}`),
    classId: classId('c'),
    at: n,
    by: 'd',
    ...one,
  }));
  const calendar = readCalendar(events as readonly CalendarEvent[]);
  expect(calendar.off.map(({ first, last }) => `${first} ${last}`)).toEqual(breaks);
  expect(Object.fromEntries(calendar.away)).toEqual(absences);
});
