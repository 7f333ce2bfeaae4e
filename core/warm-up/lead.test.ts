import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CHANGED_DRILL, SMALL_DRILL } from '../../test/arbitrary-events.ts';
import { type ChildId, childId, classId, drillId, eventId, groupId } from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import type { EventSpec, LogEvent } from '../log/event.ts';
import { evidenceOf } from '../log/evidence.ts';
import { replay } from '../log/replay.ts';
import { callNobody, type Lots } from './calling.ts';
import type { Deed } from './deed.ts';
import {
  hear,
  type LeadStep,
  type Led,
  leave,
  NOBODY,
  perform,
  type Said,
  takeOver,
} from './lead.ts';
import { cardsOf, momentsOf } from './moments.ts';
import { beginningOf, eventsBetween } from './noted.ts';
import type { Running } from './run-state.ts';
import { momentAt, standingAt } from './standing.ts';

const moments = momentsOf(SMALL_DRILL);
const children = [childId('child 1'), childId('child 2'), childId('child 3')];
const lots: Lots = {
  present: children,
  draw: (calls, count) =>
    Array.from({ length: count }, (_, n) => children[(calls.length + n) % 3] as ChildId),
};
const begun: Running = {
  classId: classId('class'),
  groupId: groupId('whole-class'),
  drillId: drillId('drill'),
  drill: SMALL_DRILL,
  standing: standingAt(moments.length),
  blending: 'whole',
  calling: callNobody([]),
  dictated: [],
  asking: null,
  rehearsed: null,
  count: 1,
  by: 'desk',
};

/** Windows in touch, whose messages wait until they are passed on, each way in its order. */
class Room {
  readonly led = new Map<string, Led>();
  readonly log: LogEvent[] = [];
  /** What the lead did, and the marks, in the order in which they came about. */
  readonly #done: (Deed | 'mark')[] = [];
  readonly #ways = new Map<string, Said[]>();
  #time = 0;

  constructor(...names: readonly string[]) {
    for (const name of names) this.led.set(name, { running: begun, waiting: [] });
  }

  /** Does something in a window; a time passes. */
  do(name: string, deed: Deed): void {
    const id = `${name} ${this.#time}`;
    const step = perform(this.led.get(name) as Led, name, { id, deed }, lots);
    if (step && step.note.length > 0) this.#done.push(deed);
    this.#take(name, step);
  }

  /** The naive twin: one desk alone does all of that. */
  asOneDesk(): readonly LogEvent[] {
    const desk = new Room('desk');
    for (const deed of this.#done) {
      if (deed === 'mark') desk.mark('desk');
      else desk.do('desk', deed);
    }
    return desk.log;
  }

  /** What broke is noted where it is seen. */
  mark(name: string): void {
    const { standing } = (this.led.get(name) as Led).running;
    const moment = momentAt(standing, moments);
    if (!moment) return;
    const { part, place } = moment;
    const body = { drillId: drillId('drill'), part, place, cards: cardsOf(moment), broke: 1 };
    this.#done.push('mark');
    this.#record([{ kind: 'marked', body: { ...body, heard: null, child: null } }]);
  }

  pass(from: string, to: string): void {
    const said = this.#ways.get(`${from} ${to}`)?.shift();
    const step = said && hear(this.led.get(to) ?? null, to, said, lots);
    if (said?.kind === 'wish' && step && step.note.length > 0) this.#done.push(said.deed);
    this.#take(to, step ?? null);
  }

  /** Passes everything on until nothing more is said. */
  settle(): void {
    while ([...this.#ways.values()].some(({ length }) => length > 0)) {
      for (const from of this.led.keys()) for (const to of this.led.keys()) this.pass(from, to);
    }
  }

  close(name: string): void {
    this.#say(name, leave(this.led.get(name) as Led, name));
  }

  takeOver(name: string): void {
    this.#take(name, takeOver(this.led.get(name) as Led, name));
  }

  #take(name: string, step: LeadStep | null): void {
    this.#time++;
    if (!step) return;
    this.led.set(name, step.led);
    this.#say(name, step.say);
    for (const { before, after, what } of step.note) {
      const known = replay(classId('class'), this.log).drills.get(drillId('drill'));
      this.#record([
        ...(known ? [] : beginningOf(before, '2026-03-02', what !== 'skip')),
        ...eventsBetween(before, after, what, known),
      ]);
    }
  }

  #say(from: string, said: readonly Said[]): void {
    for (const to of this.led.keys()) {
      if (to === from) continue;
      const way = `${from} ${to}`;
      this.#ways.set(way, [...(this.#ways.get(way) ?? []), ...said]);
    }
  }

  #record(specs: readonly EventSpec[]): void {
    for (const spec of specs) {
      const at = this.log.length + 1;
      this.log.push({
        id: eventId(`e${at}`),
        classId: classId('class'),
        at,
        by: 'device',
        ...spec,
      });
    }
  }
}

const next: Deed = { does: 'act', act: 'next' };
const deeds: fc.Arbitrary<Deed> = fc.oneof(
  { weight: 6, arbitrary: fc.constant(next) },
  {
    weight: 4,
    arbitrary: fc.record({
      does: fc.constant('act' as const),
      act: fc.constantFrom('back', 'skip', 'correct', 'sweep', 'answer'),
    }),
  },
  fc.record({ does: fc.constant('calling' as const), on: fc.boolean() }),
  fc.record({ does: fc.constant('call' as const), child: fc.constantFrom(...children) }),
);

describe('two windows on one warm-up', () => {
  it('show the same once all is said, and what is noted is what the lead went through', () => {
    const steps = fc.oneof(
      fc.record({ window: fc.constantFrom('desk', 'wall'), deed: deeds }),
      fc.record({ window: fc.constantFrom('desk', 'wall'), deed: fc.constant('mark' as const) }),
      fc.record({ window: fc.constantFrom('desk', 'wall'), deed: fc.constant(null) }),
    );
    fc.assert(
      fc.property(fc.array(steps, { maxLength: 60 }), (script) => {
        const room = new Room('desk', 'wall');
        for (const { window, deed } of script) {
          const other = window === 'desk' ? 'wall' : 'desk';
          if (deed === null) room.pass(window, other);
          else if (deed !== 'mark') room.do(window, deed);
          // A mark is made of what was looked at for a while.
          else {
            room.settle();
            room.mark(window);
          }
        }
        room.settle();
        const [desk, wall] = [...room.led.values()];
        expect(wall?.running).toEqual(desk?.running);
        expect(wall?.waiting).toEqual([]);
        expect(outcomes(room.log)).toEqual(outcomes(room.asOneDesk()));
      }),
      { numRuns: 200 },
    );
  });

  it('move one card when both press at one time', () => {
    const room = new Room('desk', 'wall');
    room.do('desk', next);
    room.do('wall', next);
    room.settle();
    expect([...room.led.values()].map(({ running }) => running.standing.at)).toEqual([1, 1]);
    expect(shownIn(room.log)).toEqual([0, 1]);
  });

  it('both count when one presses after the other was seen', () => {
    const room = new Room('desk', 'wall');
    room.do('wall', next);
    room.do('wall', next);
    expect(room.led.get('wall')?.running.standing.at).toBe(2);
    expect(room.log).toEqual([]);
    room.settle();
    room.do('desk', next);
    room.settle();
    expect(shownIn(room.log)).toEqual([0, 1, 2, 3]);
  });

  it('leave a mark as it is: what broke does not become mended by a press elsewhere', () => {
    const room = new Room('desk', 'wall');
    room.do('desk', next);
    room.settle();
    room.mark('wall');
    room.do('wall', next);
    room.do('desk', next);
    room.settle();
    expect(outcomes(room.log)).toEqual(['well', 'broke', 'well']);
  });

  it('goes on where the lead was closed, or does not answer, and nothing is lost', () => {
    const room = new Room('desk', 'wall');
    room.close('desk');
    room.pass('desk', 'wall');
    expect(room.led.get('wall')?.running.by).toBe(NOBODY);
    room.do('wall', next);
    expect(room.led.get('wall')?.running.by).toBe('wall');
    const hung = new Room('desk', 'wall');
    hung.do('wall', next);
    hung.do('wall', next);
    hung.takeOver('wall');
    expect(shownIn(hung.log)).toEqual([0, 1, 2]);
    hung.settle();
    expect([...hung.led.values()].map(({ running }) => running.by)).toEqual(['wall', 'wall']);
  });

  it('count what was pressed while the lead was out of reach, though it says first where it stands', () => {
    const room = new Room('desk', 'wall');
    room.do('wall', next);
    room.do('wall', next);
    const before = room.led.get('wall') as Led;
    const step = hear(before, 'wall', { kind: 'state', running: begun, granted: null }, lots);
    expect(step).toBeNull();
    room.settle();
    expect(shownIn(room.log)).toEqual([0, 1, 2]);
  });

  it('follow the one that began last', () => {
    const later: Running = {
      ...begun,
      drillId: drillId('next'),
      drill: CHANGED_DRILL,
      count: 9,
      by: 'wall',
    };
    const step = hear(
      { running: begun, waiting: [] },
      'desk',
      { kind: 'state', running: later, granted: null },
      lots,
    );
    expect(step?.led.running).toBe(later);
  });
});

describe('a drill that two devices noted', () => {
  it('is what one of them noted: what is up does not come up twice', () => {
    const drill = { drillId: drillId('drill'), part: 'blending' as const, place: 0 };
    const mark = {
      ...drill,
      cards: ['m=M', 'a=AE', 't=T'] satisfies readonly CardId[],
      broke: 1,
      heard: null,
      child: null,
    };
    const specs: readonly EventSpec[] = [
      {
        kind: 'begun',
        body: {
          drillId: drillId('drill'),
          groupId: groupId('g'),
          day: '2026-03-02',
          drill: SMALL_DRILL,
        },
      },
      { kind: 'shown', body: drill },
      { kind: 'marked', body: mark },
      { kind: 'shown', body: drill },
    ];
    expect(outcomes(logOf(specs))).toEqual(['broke']);
    const returned = [...specs.slice(0, 3), { kind: 'corrected' as const, body: drill }];
    expect(outcomes(logOf([...returned, { kind: 'shown', body: drill }]))).toEqual(['mended']);
  });
});

function logOf(specs: readonly EventSpec[]): readonly LogEvent[] {
  return specs.map((spec, n) => ({
    id: eventId(`e${n}`),
    classId: classId('class'),
    at: n + 1,
    by: 'd',
    ...spec,
  }));
}

function outcomes(log: readonly LogEvent[]): readonly string[] {
  const record = replay(classId('class'), log).drills.get(drillId('drill'));
  return record ? evidenceOf(record).map(({ outcome }) => outcome) : [];
}

/** The moments shown, by their number in the drill. */
function shownIn(log: readonly LogEvent[]): readonly number[] {
  const shown = replay(classId('class'), log).drills.get(drillId('drill'))?.shown ?? [];
  return shown.map((one) =>
    moments.findIndex(({ part, place }) => part === one.part && place === one.place),
  );
}
