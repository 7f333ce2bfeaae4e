import type { EventId } from '../ids.ts';
import { inTime, timesSaid } from './dating.ts';
import type { EventBodies, LogEvent } from './event.ts';
import { compareEvents } from './event-order.ts';

/** Events of a class that bear times more than a day after now. */
export interface Ahead {
  /** What to say of those that a wrong clock stamped: `dated` events set them right. */
  readonly right: readonly EventBodies['dated'][];
  /** The ids of those where this device's own clock may be the wrong one: they are left alone. */
  readonly doubtful: ReadonlySet<EventId>;
}

/**
 * Finds what bears times far ahead, and when that should count instead.
 *
 * Problem: a time far ahead wins over everything that is said until then, and every later event is stamped
 * after it. But a clock with an empty battery begins years back, and then it is right events that lie
 * ahead; to set those right would put a whole year in the wrong place. Method: a log that is used goes on
 * from week to week, so events belong to a wrong clock when nothing leads up to them: no pause of an
 * ordinary year is so long as the one before them, and they are the fewer. More than a century ahead it is
 * never this device that is wrong. They keep their order and what lay between them, and end now, after
 * everything else. Alternative: new times in place of the old ones; but an event never changes, so that
 * logs can be merged by ids. `now` is milliseconds; O(n) while nothing lies ahead.
 */
export function findAhead(events: readonly LogEvent[], now: number): Ahead {
  const isAhead = ({ at }: LogEvent): boolean => at > now + DAY;
  if (!events.some(isAhead)) return { right: [], doubtful: new Set() };
  const times = timesSaid(events);
  const counted = events.map((event) => inTime(event, times));
  const ahead = counted.filter(isAhead).sort(compareEvents);
  if (ahead.length === 0) return { right: [], doubtful: new Set() };
  let last = latest(counted.filter((event) => !isAhead(event)));
  const gap = ahead.findIndex(({ at }, place) => at - (ahead[place - 1]?.at ?? last) > PAUSE);
  const isCutOff = gap >= 0 && (ahead.length - gap) * 2 <= counted.length;
  const certain = ahead.findIndex(({ at }) => at > now + CENTURY);
  const from = [...(isCutOff ? [gap] : []), ...(certain >= 0 ? [certain] : [])];
  const split = from.length === 0 ? ahead.length : Math.min(...from);
  const doubtful = ahead.slice(0, split);
  last = Math.max(last, latest(doubtful));
  return {
    right: endingBy(ahead.slice(split), Math.floor(now), last),
    doubtful: new Set(doubtful.map(({ id }) => id)),
  };
}

const DAY = 24 * 60 * 60 * 1000;

/** Longer than a summer; no class rests so long in a year. */
const PAUSE = 100 * DAY;

const CENTURY = 36_525 * DAY;

/** Times for ordered events that end now and come after `last`, with the same pauses between them if there is room. */
function endingBy(
  events: readonly LogEvent[],
  now: number,
  last: number,
): readonly EventBodies['dated'][] {
  const end = Math.max(now, last + events.length);
  let at = end;
  const right = events
    .map(({ id: event, at: told }, place) => {
      const pause = told - (events[place - 1]?.at ?? told);
      return { event, pause: pause > PAUSE ? 1 : pause };
    })
    .reverse()
    .map(({ event, pause }) => {
      const dated = { event, at };
      at -= pause;
      return dated;
    })
    .reverse();
  if ((right[0]?.at ?? end) > last) return right;
  return right.map(({ event }, place) => ({ event, at: end - (right.length - 1 - place) }));
}

function latest(events: readonly LogEvent[]): number {
  return events.reduce((last, { at }) => Math.max(last, at), -1);
}
