import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  arbitraryEvents,
  CHANGED_DRILL,
  SMALL_DRILL,
  shuffledWithRepeats,
} from '../../test/arbitrary-events.ts';
import { type ChildId, childId, classId, drillId, eventId, type GroupId, groupId } from '../ids.ts';
import { eventsIn } from './class-events.ts';
import { type ClassState, lineKey, WHOLE_CLASS } from './class-state.ts';
import { LATEST } from './clock.ts';
import { planAt } from './drill-record.ts';
import type { EventSpec, KnownEvent, LogEvent } from './event.ts';
import { compareEvents } from './event-order.ts';
import { mergeEvents } from './merge.ts';
import { applyEvent, replay } from './replay.ts';
import { understand } from './understand.ts';

/** Events a second apart, ids e1, e2, … */
function logOf(...specs: readonly EventSpec[]): readonly LogEvent[] {
  return specs.map((spec, place) => ({
    id: eventId(`e${place + 1}`),
    classId: classId('class'),
    at: 1000 * (place + 1),
    by: 'desk',
    ...spec,
  }));
}

const classOf = (...specs: readonly EventSpec[]): ClassState =>
  replay(classId('class'), logOf(...specs));
const undo = (event: string): EventSpec => ({ kind: 'undone', body: { event: eventId(event) } });
const nameOf = (id: ChildId, value: string): EventSpec => ({
  kind: 'set',
  body: { of: 'child', id, field: 'name', value },
});
const moveTo = (id: ChildId, value: GroupId | null): EventSpec => ({
  kind: 'set',
  body: { of: 'child', id, field: 'group', value },
});
const begin = (drill: string): EventSpec => ({
  kind: 'begun',
  body: { drillId: drillId(drill), groupId: WHOLE_CLASS, day: '2026-03-02', drill: SMALL_DRILL },
});
const mark = (drill: string, place: number, child: ChildId | null = null): EventSpec => ({
  kind: 'marked',
  body: {
    drillId: drillId(drill),
    part: 'blending',
    place,
    cards: ['m=M', 'a=AE', 't=T'],
    broke: 2,
    heard: null,
    child,
  },
});

/** What a class says, but for the events behind it and what she took out of it. */
function withoutTraces({ facts: _, last: __, discarded: ___, ...seen }: ClassState) {
  return seen;
}

describe('replay', () => {
  it('does not depend on the order in which events come, nor on repeats', () => {
    const logs = arbitraryEvents().chain((events) =>
      fc.tuple(fc.constant(events), shuffledWithRepeats(events)),
    );
    fc.assert(
      fc.property(logs, ([events, otherwise]) => {
        expect(replay(classId('class'), otherwise)).toEqual(replay(classId('class'), events));
      }),
      { numRuns: 300 },
    );
  });

  it('equals applying the events one by one, in any order', () => {
    const logs = arbitraryEvents().chain((events) => shuffledWithRepeats(events));
    fc.assert(
      fc.property(logs, (events) => {
        const applied = events.reduce(applyEvent, replay(classId('class'), []));
        const whole = replay(classId('class'), events);
        expect(applied).toEqual(whole);
        for (const map of ['groups', 'children', 'drills', 'discarded'] as const) {
          expect([...applied[map].keys()]).toEqual([...whole[map].keys()]);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('sees what a reader sees who strikes out the undone by hand', () => {
    fc.assert(
      fc.property(arbitraryEvents(), (events) => {
        const seen = withoutTraces(replay(classId('class'), events));
        const byHand = withoutTraces(replay(classId('class'), struckByHand(datedByHand(events))));
        expect(seen).toEqual(byHand);
      }),
      { numRuns: 300 },
    );
  });

  it('keeps a drill that was taken out of the record apart, whole, until it is put back', () => {
    const begun = [begin('one'), mark('one', 0), begin('two')];
    const whole = classOf(...begun);
    const out = classOf(...begun, undo('e1'));
    expect([...out.drills.keys()]).toEqual(['two']);
    expect(out.discarded.get(drillId('one'))).toEqual(whole.drills.get(drillId('one')));
    const late = classOf(...begun, undo('e1'), mark('one', 1));
    expect(late.discarded.get(drillId('one'))?.marks).toHaveLength(2);
    const back = classOf(...begun, undo('e1'), undo('e4'));
    expect([...back.drills.keys()]).toEqual(['one', 'two']);
    expect([back.drills, back.discarded.size]).toEqual([whole.drills, 0]);
  });

  it('changes nothing, not even the value, for an event that is known or of another class', () => {
    fc.assert(
      fc.property(arbitraryEvents(), (events) => {
        const state = replay(classId('class'), events);
        for (const event of events) {
          expect(applyEvent(state, event)).toBe(state);
          expect(
            applyEvent(state, { ...event, id: eventId('new'), classId: classId('another') }),
          ).toBe(state);
        }
      }),
    );
  });

  it('keeps what it does not touch the same value, so that nothing else is drawn again', () => {
    const before = classOf(begin('one'), begin('two'), nameOf(childId('r'), 'Robin'));
    const [, , , , marked] = logOf(
      begin('one'),
      begin('two'),
      nameOf(childId('r'), 'R'),
      undo('x'),
      mark('two', 0),
    );
    const after = applyEvent(before, marked as LogEvent);
    expect(after.drills.get(drillId('two'))?.marks).toHaveLength(1);
    expect(after.drills.get(drillId('one'))).toBe(before.drills.get(drillId('one')));
    expect(after.children).toBe(before.children);
    expect(after.notes).toBe(before.notes);
  });

  it('keeps events of a newer version and shows nothing of them', () => {
    const newer = {
      id: eventId('n'),
      classId: classId('class'),
      at: 5,
      by: 'desk',
      kind: 'sung',
      body: {},
    };
    const state = applyEvent(replay(classId('class'), []), newer);
    expect(state.facts.unknown).toEqual([newer]);
    expect(state.last).toBe(5);
    expect({ ...state, facts: null, last: 0 }).toEqual({
      ...replay(classId('class'), []),
      facts: null,
      last: 0,
    });
  });
});

describe('a class', () => {
  it('begins as the whole class, without a name or anybody in it', () => {
    const { name, archived, groups, children, drills } = replay(classId('class'), []);
    expect({ name, archived }).toEqual({ name: '', archived: false });
    expect([...groups.keys()]).toEqual([WHOLE_CLASS]);
    expect(children.size + drills.size).toBe(0);
  });

  it('speaks as the word list does until something else was said, and what is not known is let be', () => {
    const speaks = (value: unknown) =>
      ({ kind: 'set', body: { of: 'class', id: 'class', field: 'accent', value } }) as EventSpec;
    const spoken = (...values: unknown[]) =>
      replay(classId('class'), logOf(...values.map(speaks))).accent;
    expect(spoken()).toEqual([]);
    expect(spoken(['pin-pen'], ['southern-british'])).toEqual(['southern-british']);
    expect(spoken(['pin-pen'], ['of-a-newer-version'], 'pin-pen')).toEqual(['pin-pen']);
  });

  it('takes of two values for one field the later one, whichever came first', () => {
    const log = logOf(nameOf(childId('r'), 'Robin'), nameOf(childId('r'), 'R. B.'));
    for (const events of [log, log.toReversed()]) {
      expect(replay(classId('class'), events).children.get(childId('r'))?.name).toBe('R. B.');
    }
  });

  it('takes of two values set at the same moment the one whose id sorts last', () => {
    const [first, second] = logOf(nameOf(childId('r'), 'Robin'), nameOf(childId('r'), 'Bobbin'));
    const together = [first, { ...second, at: first?.at }] as LogEvent[];
    expect(replay(classId('class'), together).children.get(childId('r'))?.name).toBe('Bobbin');
  });

  it('keeps what was marked of a child that moves to another group', () => {
    const state = classOf(
      nameOf(childId('r'), 'Robin'),
      moveTo(childId('r'), groupId('moss')),
      begin('one'),
      mark('one', 1, childId('r')),
      moveTo(childId('r'), groupId('fern')),
    );
    expect(state.children.get(childId('r'))?.group).toBe('fern');
    expect(state.drills.get(drillId('one'))?.marks[0]?.child).toBe('r');
  });
});

describe('undoing', () => {
  it('takes back a mark, and undone itself gives it again', () => {
    expect(
      classOf(begin('one'), mark('one', 0), undo('e2')).drills.get(drillId('one'))?.marks,
    ).toEqual([]);
    const again = classOf(begin('one'), mark('one', 0), undo('e2'), undo('e3'));
    expect(again.drills.get(drillId('one'))?.marks).toHaveLength(1);
    const gone = classOf(begin('one'), mark('one', 0), undo('e2'), undo('e3'), undo('e4'));
    expect(gone.drills.get(drillId('one'))?.marks).toEqual([]);
  });

  it('holds for a mark that comes later than its undoing, from another device', () => {
    const [begun, marked, undone] = logOf(begin('one'), mark('one', 0), undo('e2'));
    const state = [undone, begun, marked].reduce(
      (before, event) => applyEvent(before, event as LogEvent),
      replay(classId('class'), []),
    );
    expect(state.drills.get(drillId('one'))?.marks).toEqual([]);
  });

  it('brings back the value before when a setting is undone', () => {
    const state = classOf(
      nameOf(childId('r'), 'Robin'),
      nameOf(childId('r'), 'Rabbit'),
      undo('e2'),
    );
    expect(state.children.get(childId('r'))?.name).toBe('Robin');
  });

  it('takes back one drill begun by mistake and leaves the others', () => {
    const state = classOf(begin('one'), begin('two'), undo('e1'));
    expect([...state.drills.keys()]).toEqual(['two']);
  });

  it('does nothing to an event that came after it', () => {
    const [undone, marked, begun] = logOf(undo('e2'), mark('one', 0), begin('one'));
    const state = replay(classId('class'), [undone, marked, begun] as LogEvent[]);
    expect(state.drills.get(drillId('one'))?.marks).toHaveLength(1);
  });

  it('takes back decisions and notes', () => {
    const decide: EventSpec = {
      kind: 'decided',
      body: { choice: 'block', about: 'word', text: 'bat' },
    };
    const note: EventSpec = {
      kind: 'noted',
      body: { drillId: null, groupId: WHOLE_CLASS, text: 'ă again' },
    };
    const kept = classOf(decide, note);
    expect(kept.decisions).toEqual([{ id: 'e1', choice: 'block', about: 'word', text: 'bat' }]);
    expect(kept.notes.map(({ text }) => text)).toEqual(['ă again']);
    const gone = classOf(decide, note, undo('e1'), undo('e2'));
    expect([gone.decisions, gone.notes]).toEqual([[], []]);
  });
});

describe('an event that bears a time far ahead', () => {
  const year2100 = Date.UTC(2100, 0);
  const dated = (event: string, at: number): EventSpec => ({
    kind: 'dated',
    body: { event: eventId(event), at },
  });
  const far = (log: readonly LogEvent[], place: number, at = LATEST) =>
    log.map((event, n) => (n === place ? { ...event, at } : event));

  it('counts when it is said to have been, and no later name loses to it', () => {
    const log = far(
      logOf(nameOf(childId('r'), 'Robin'), nameOf(childId('r'), 'R. B.'), dated('e1', 1500)),
      0,
    );
    const state = replay(classId('class'), log);
    expect(state.children.get(childId('r'))?.name).toBe('R. B.');
    expect(state.last).toBe(3000);
  });

  it('counts at the earliest time that anyone said of it, and never later than it bears', () => {
    const said = [dated('e1', 2500), dated('e1', 1500), dated('e2', year2100)];
    const log = far(
      logOf(nameOf(childId('r'), 'Robin'), nameOf(childId('r'), 'R. B.'), ...said),
      0,
      year2100,
    );
    expect(replay(classId('class'), log).children.get(childId('r'))?.name).toBe('R. B.');
    expect(replay(classId('class'), log).facts.settings.map(({ at }) => at)).toEqual([1500, 2000]);
  });

  it('is passed on as it was written', () => {
    const log = far(logOf(nameOf(childId('r'), 'Robin'), dated('e1', 1500)), 0);
    expect(eventsIn(replay(classId('class'), log))).toEqual(mergeEvents(log, []));
  });
});

describe('a drill in the log', () => {
  it('stands at what was shown last, and can be resumed until it ended', () => {
    const show = (place: number): EventSpec => ({
      kind: 'shown',
      body: { drillId: drillId('one'), part: 'blending', place },
    });
    const open = classOf(begin('one'), show(0), show(1)).drills.get(drillId('one'));
    expect(open?.shown.at(-1)).toMatchObject({ part: 'blending', place: 1 });
    expect(open?.ended).toBeNull();
    const end: EventSpec = { kind: 'ended', body: { drillId: drillId('one'), complete: true } };
    expect(classOf(begin('one'), show(0), end).drills.get(drillId('one'))?.ended?.complete).toBe(
      true,
    );
  });

  it('has the plan to which it was changed, and knows the one it had at any time', () => {
    const changed: EventSpec = {
      kind: 'replanned',
      body: { drillId: drillId('one'), drill: CHANGED_DRILL },
    };
    const drill = classOf(begin('one'), mark('one', 0), changed).drills.get(drillId('one'));
    expect(drill?.drill).toEqual(CHANGED_DRILL);
    expect(drill && planAt(drill, 2000)).toEqual(SMALL_DRILL);
    expect(drill && planAt(drill, 3000)).toEqual(CHANGED_DRILL);
    const back = classOf(begin('one'), changed, undo('e2')).drills.get(drillId('one'));
    expect(back).toMatchObject({ drill: SMALL_DRILL, earlier: [] });
  });

  it('waits for its beginning when marks come first', () => {
    const [begun, marked] = logOf(begin('one'), mark('one', 0));
    const waiting = applyEvent(replay(classId('class'), []), marked as LogEvent);
    expect(waiting.drills.size).toBe(0);
    expect(applyEvent(waiting, begun as LogEvent).drills.get(drillId('one'))?.marks).toHaveLength(
      1,
    );
  });

  it('takes up what was said of a mark afterwards: what was heard, the card, the child', () => {
    const amend = (body: object): EventSpec =>
      ({ kind: 'amended', body: { drillId: drillId('one'), mark: 'e2', ...body } }) as EventSpec;
    const state = classOf(
      begin('one'),
      mark('one', 0),
      amend({ field: 'heard', value: { kind: 'left-out' } }),
      amend({ field: 'heard', value: { kind: 'phoneme', sound: 'IH' } }),
      amend({ field: 'broke', value: 3 }),
      amend({ field: 'broke', value: 9 }),
      amend({ field: 'child', value: 'r' }),
    );
    expect(state.drills.get(drillId('one'))?.marks).toEqual([
      expect.objectContaining({
        heard: { kind: 'phoneme', sound: 'IH' },
        broke: 3,
        child: 'r',
      }),
    ]);
  });
});

/** The naive twin of dating: every event at the earliest time, and nothing said of times any more. */
function datedByHand(events: readonly LogEvent[]): readonly LogEvent[] {
  const said = events
    .map(understand)
    .filter((event): event is Extract<KnownEvent, { kind: 'dated' }> => event?.kind === 'dated');
  return events
    .filter((event) => !said.some(({ id }) => id === event.id))
    .map((event) => ({
      ...event,
      at: Math.min(
        event.at,
        ...said.filter(({ body }) => body.event === event.id).map(({ body }) => body.at),
      ),
    }));
}

/**
 * The naive twin: an event counts when no undoing after it counts, asked again
 * of every event, and the undone are cut out of the log.
 */
function struckByHand(events: readonly LogEvent[]): readonly LogEvent[] {
  const undos = events
    .map(understand)
    .filter((event): event is Extract<KnownEvent, { kind: 'undone' }> => event?.kind === 'undone');
  const counts = (event: LogEvent): boolean =>
    !undos.some(
      (other) => other.body.event === event.id && compareEvents(event, other) < 0 && counts(other),
    );
  return events.filter((event) => event.kind !== 'undone' && counts(event));
}

describe('what a class holds, in order', () => {
  const at = (time: number, drill: string): LogEvent => ({
    id: eventId(`begun ${drill}`),
    classId: classId('class'),
    at: time,
    by: 'desk',
    ...begin(drill),
  });

  it.each<[name: string, events: readonly LogEvent[], drills: readonly string[]]>([
    ['as drills were begun, whatever their ids', [at(1000, 'z'), at(2000, 'a')], ['z', 'a']],
    ['as they were begun, though one is heard of late', [at(2000, 'a'), at(1000, 'z')], ['z', 'a']],
    [
      'by their ids when begun at one time',
      [at(1000, 'b'), at(1000, 'c'), at(1000, 'a')],
      ['a', 'b', 'c'],
    ],
  ])('drills come %s', (_, events, drills) => {
    expect([...replay(classId('class'), events).drills.keys()]).toEqual(drills);
    const oneByOne = events.reduce(applyEvent, replay(classId('class'), []));
    expect([...oneByOne.drills.keys()]).toEqual(drills);
  });

  it('her own line on a page is the last she wrote for it, each page and child by itself', () => {
    const write = (about: ChildId, text: string): EventSpec => ({
      kind: 'wrote',
      body: { page: 'meeting', about, text },
    });
    const { lines } = classOf(
      write(childId('c1'), 'first'),
      write(childId('c2'), 'other'),
      write(childId('c1'), 'last'),
    );
    expect(lines.get(lineKey({ page: 'meeting', about: childId('c1') }))).toBe('last');
    expect(lines.get(lineKey({ page: 'meeting', about: childId('c2') }))).toBe('other');
    expect(lines.size).toBe(2);
  });
});
