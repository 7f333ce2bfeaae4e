import { describe, expect, it } from 'vitest';
import { SMALL_FORM } from '../../test/arbitrary-events.ts';
import type { CheckItem } from '../checks/check-form.ts';
import { scoreCheck } from '../checks/score-check.ts';
import { checkId, childId, classId, type EventId, eventId } from '../ids.ts';
import { checksOf, readingOf } from './check-record.ts';
import { eventsIn } from './class-events.ts';
import type { CheckRecord } from './class-state.ts';
import type { EventBodies, EventSpec, ItemReading } from './event.ts';
import { replay } from './replay.ts';

const begin: EventSpec = {
  kind: 'check-begun',
  body: {
    checkId: checkId('one'),
    child: childId('mina'),
    day: '2026-03-02',
    form: SMALL_FORM,
    limit: 60,
  },
};
const mark = (item: number, outcome: ItemReading['outcome'], ...cards: number[]): EventSpec => ({
  kind: 'check-marked',
  body: {
    checkId: checkId('one'),
    item,
    outcome,
    broke: cards.map((card) => ({ card, heard: { kind: 'phoneme', sound: 'EH' } })),
  },
});
const end = (reached: number): EventSpec => ({
  kind: 'check-ended',
  body: { checkId: checkId('one'), reached, seconds: 30 },
});

function checkOf(...specs: readonly EventSpec[]) {
  const events = specs.map((spec, place) => ({
    id: eventId(`e${place + 1}`),
    classId: classId('class'),
    at: 1000 * (place + 1),
    by: 'desk',
    ...spec,
  }));
  const state = replay(classId('class'), events);
  expect(eventsIn(state)).toEqual(events);
  return checksOf(state, childId('mina'))[0];
}

describe('a check in the log', () => {
  it('is what was begun, with the last mark on each item', () => {
    const record = checkOf(
      begin,
      mark(0, 'wrong', 2),
      mark(1, 'hesitated'),
      mark(0, 'wrong', 2, 3),
    );
    expect(record).toMatchObject({ child: 'mina', limit: 60, at: 1000, ended: null });
    expect([...(record?.marks.keys() ?? [])]).toEqual([1, 0]);
    expect(record?.marks.get(0)?.broke.map(({ card }) => card)).toEqual([2, 3]);
  });

  it('forgets a mark that was undone, or after which the item was right after all', () => {
    const undone: EventSpec = { kind: 'undone', body: { event: eventId('e2') } };
    expect(checkOf(begin, mark(0, 'wrong', 2))?.markedLast).toBe('e2');
    expect(checkOf(begin, mark(0, 'wrong', 2), undone)?.markedLast).toBe(null);
    expect(checkOf(begin, mark(0, 'wrong', 2), undone)?.marks.size).toBe(0);
    expect(checkOf(begin, mark(0, 'wrong', 2), mark(0, 'right'))?.marks.size).toBe(0);
  });

  it('is not there when its beginning was undone, and waits for it when marks come first', () => {
    expect(
      checkOf(begin, mark(0, 'wrong', 2), { kind: 'undone', body: { event: eventId('e1') } }),
    ).toBe(undefined);
    expect(checkOf(mark(0, 'wrong', 2))).toBe(undefined);
    expect(checkOf(mark(0, 'wrong', 2), begin)?.marks.size).toBe(1);
  });

  it('has a row that was skipped in one mark, and undone with it', () => {
    const items = Array.from({ length: 7 }, () => SMALL_FORM.items[0] as CheckItem);
    const long: EventSpec = {
      kind: 'check-begun',
      body: { ...begin.body, form: { ...SMALL_FORM, items } } as EventBodies['check-begun'],
    };
    const skip = (item: number, count: number): EventSpec => ({
      kind: 'check-marked',
      body: { checkId: checkId('one'), item, count, outcome: 'left-out', broke: [] },
    });
    const record = checkOf(long, mark(1, 'wrong', 1), skip(0, 5), end(7)) as CheckRecord;
    expect([...record.marks.keys()]).toEqual([0, 1, 2, 3, 4]);
    expect(readingOf(record).skippedRows).toEqual([{ from: 0, count: 5 }]);
    expect(scoreCheck(readingOf(record))).toMatchObject({ asked: 7, right: 2 });
    expect(scoreCheck(readingOf(record), 'one')).toMatchObject({ asked: 3, right: 2 });
    const undone: EventSpec = { kind: 'undone', body: { event: record.markedLast as EventId } };
    const back = checkOf(long, mark(1, 'wrong', 1), skip(0, 5), end(7), undone) as CheckRecord;
    expect([...back.marks.keys()]).toEqual([1]);
    const last = checkOf(long, skip(5, 2), end(7)) as CheckRecord;
    expect(readingOf(last).skippedRows).toEqual([{ from: 5, count: 2 }]);
  });

  it('knows no skipped row where one item of it was read', () => {
    const skip: EventSpec = {
      kind: 'check-marked',
      body: { checkId: checkId('one'), item: 0, count: 2, outcome: 'left-out', broke: [] },
    };
    const record = checkOf(begin, skip, mark(1, 'right'), end(2)) as CheckRecord;
    expect(readingOf(record).skippedRows).toEqual([]);
  });

  it('leaves out what is said of items and cards that the form has not', () => {
    const record = checkOf(begin, mark(2, 'wrong', 1), mark(0, 'wrong', 1, 4), end(9));
    expect([...(record?.marks.keys() ?? [])]).toEqual([0]);
    expect(record?.marks.get(0)?.broke.map(({ card }) => card)).toEqual([1]);
    expect(record?.ended?.reached).toBe(2);
  });

  it('is scored as it was read: one card of six wrong in half a minute', () => {
    const record = checkOf(begin, mark(0, 'wrong', 2), end(2));
    expect(record && scoreCheck(readingOf(record))).toMatchObject({
      asked: 2,
      right: 1,
      soundsAsked: 6,
      soundsRight: 5,
      soundsPerMinute: 10,
    });
  });

  it('counts up to the last item marked while it goes on', () => {
    const record = checkOf(begin, mark(0, 'self-corrected'));
    expect(record && scoreCheck(readingOf(record))).toMatchObject({ asked: 1, right: 1 });
  });
});
