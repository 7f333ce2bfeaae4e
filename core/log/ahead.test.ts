import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { childId, classId, eventId } from '../ids.ts';
import { findAhead } from './ahead.ts';
import { LATEST, tick } from './clock.ts';
import type { EventSpec, LogEvent } from './event.ts';
import { replay } from './replay.ts';

const MINUTE = 60_000;
const DAY = 24 * 60 * MINUTE;
const now = Date.UTC(2026, 10, 30, 9);

const named = (id: string, at: number, value = id): LogEvent => ({
  id: eventId(id),
  classId: classId('class'),
  at,
  by: 'desk',
  kind: 'set',
  body: { of: 'child', id: childId('r'), field: 'name', value },
});
/** So many events, one a day, the last of them so many days after now. */
const daily = (count: number, lastDay: number, prefix = 'd') =>
  Array.from({ length: count }, (_, n) =>
    named(`${prefix}${n}`, now + (lastDay - (count - 1 - n)) * DAY),
  );

/** The log with what was found said in it. */
function setRight(events: readonly LogEvent[], at = now): readonly LogEvent[] {
  const said = findAhead(events, at).right.map((body, n) => {
    const spec: EventSpec = { kind: 'dated', body };
    return { id: eventId(`said ${n}`), classId: classId('class'), at, by: 'desk', ...spec };
  });
  return [...events, ...said];
}

describe('what lies ahead', () => {
  it('is nothing while times are right, or ahead by less than a day', () => {
    const events = [...daily(20, 0), named('soon', now + DAY)];
    expect(findAhead(events, now)).toEqual({ right: [], doubtful: new Set() });
  });

  it.each([
    ['the last time there is', LATEST],
    ['a year', now + 365 * DAY],
    ['half a year', now + 180 * DAY],
  ])('is set right when nothing leads up to it: %s', (_, at) => {
    const { right, doubtful } = findAhead([...daily(20, -1), named('far', at)], now);
    expect(right).toEqual([{ event: 'far', at: now }]);
    expect(doubtful.size).toBe(0);
  });

  it('keeps the order of what a clock a year ahead stamped, and the minutes between', () => {
    const year = now + 365 * DAY;
    const far = [named('x', year), named('y', year + MINUTE), named('z', LATEST)];
    expect(findAhead([...daily(20, -1), ...far.toReversed()], now).right).toEqual([
      { event: 'x', at: now - 1 - MINUTE },
      { event: 'y', at: now - 1 },
      { event: 'z', at: now },
    ]);
  });

  it('comes after everything else, however little room there is', () => {
    const far = [named('x', now + 365 * DAY), named('y', now + 366 * DAY)];
    expect(findAhead([...daily(20, 0), ...far], now).right).toEqual([
      { event: 'x', at: now + 1 },
      { event: 'y', at: now + 2 },
    ]);
  });

  it('is left alone when this clock was set back: by days, into a summer, by many years', () => {
    const school = [...daily(100, 0, 'spring'), ...daily(60, 130, 'fall')];
    for (const back of [now - 20 * DAY, now + 30 * DAY, Date.UTC(2010, 0)]) {
      const { right, doubtful } = findAhead(school, back);
      expect(right).toEqual([]);
      expect(doubtful.size).toBeGreaterThan(0);
    }
  });

  it('is set right even where all of it lies a century ahead, of which no clock of hers is guilty', () => {
    expect(findAhead([named('a', LATEST - 1), named('b', LATEST)], now).right).toEqual([
      { event: 'a', at: now - 1 },
      { event: 'b', at: now },
    ]);
  });

  it('is never found again once it was set right, and then neither wins nor drags the clock', () => {
    const logs = fc.record({
      count: fc.integer({ min: 3, max: 30 }),
      far: fc.uniqueArray(
        fc.oneof(fc.integer({ min: now + 101 * DAY, max: now + 9999 * DAY }), fc.constant(LATEST)),
        { minLength: 1, maxLength: 3 },
      ),
    });
    fc.assert(
      fc.property(logs, ({ count, far }) => {
        const log = setRight([...daily(count, 0), ...far.map((at, n) => named(`far${n}`, at))]);
        expect(findAhead(log, now).right).toEqual([]);
        const before = replay(classId('class'), log);
        expect(before.last).toBeLessThan(now + 10);
        expect(tick(before.last, now + MINUTE)).toBe(now + MINUTE);
        const later = replay(classId('class'), [
          ...log,
          named('later', tick(before.last, now + MINUTE)),
        ]);
        expect(later.children.get(childId('r'))?.name).toBe('later');
      }),
    );
  });

  it('keeps the order in which things were', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(600), { minLength: 1, maxLength: 40 }), (days) => {
        const events = days.map((day, n) => named(`e${n}`, now + (day - 300) * DAY));
        const orderOf = (log: readonly LogEvent[]) =>
          replay(classId('class'), log).facts.settings.map(
            ({ id }) => events.find((event) => event.id === id)?.at ?? 0,
          );
        const order = orderOf(setRight(events));
        expect(order).toEqual(order.toSorted((left, right) => left - right));
      }),
    );
  });
});
