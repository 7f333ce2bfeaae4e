import { describe, expect, it } from 'vitest';
import { classId, eventId } from '../../../core/ids.ts';
import { WHOLE_CLASS } from '../../../core/log/class-state.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import { makeGroupPlace } from '../../../core/log/group-place.ts';
import { replay } from '../../../core/log/replay.ts';
import { SEQUENCE } from '../../../core/sequence/built-in.ts';
import { makeProgress, taughtOf } from '../../../core/sequence/progress.ts';
import { allTaught } from '../../../core/sequence/teach.ts';
import { newestCards, newestSight } from '../../state/newest-cards.ts';
import { newThisWeek } from './this-week.ts';

const DAY = 86_400_000;
const now = 1_000 * DAY;

/** The class was said to stand at a step, so many days ago. */
function stood(...places: readonly (readonly [daysAgo: number, step: number])[]) {
  return places.map(
    ([daysAgo, step], at): LogEvent => ({
      id: eventId(`e${at}`),
      classId: classId('c'),
      at: now - daysAgo * DAY,
      by: 'd',
      kind: 'set',
      body: {
        of: 'group',
        id: WHOLE_CLASS,
        field: 'standing',
        value: makeGroupPlace(makeProgress(SEQUENCE, step), SEQUENCE),
      },
    }),
  );
}

const cardsOf = (step: number) => allTaught(taughtOf(makeProgress(SEQUENCE, step)));
const asked = (events: readonly LogEvent[], step: number) =>
  newThisWeek(replay(classId('c'), events), WHOLE_CLASS, makeProgress(SEQUENCE, step), now);

describe('new this week', () => {
  it('is what was taught since the place of seven days ago', () => {
    const events = stood([20, 5], [8, 9], [3, 11], [1, 14]);
    const before = new Set(cardsOf(9));
    expect(asked(events, 14)).toEqual(cardsOf(14).filter((id) => !before.has(id)));
  });

  it('is the newest cards when nothing was taught this week, or no log reaches back so far', () => {
    const here = makeProgress(SEQUENCE, 9);
    const newest = [...newestCards(here), ...newestSight(here)];
    expect(newest.length).toBeGreaterThan(0);
    expect(asked(stood([20, 9]), 9)).toEqual(newest);
    expect(asked(stood([2, 4], [1, 9]), 9)).toEqual(newest);
    expect(asked([], 9)).toEqual(newest);
  });
});
