import { describe, expect, it } from 'vitest';
import { SMALL_DRILL } from '../../test/arbitrary-events.ts';
import type { Drill } from '../drills/drill.ts';
import { type ChildId, childId, classId, drillId, eventId, groupId } from '../ids.ts';
import type { EventSpec, LogEvent } from '../log/event.ts';
import { evidenceOf } from '../log/evidence.ts';
import { mergeEvents } from '../log/merge.ts';
import { replay } from '../log/replay.ts';
import { makeRandom, type Random } from '../random.ts';
import { callNobody, type Lots } from './calling.ts';
import type { Deed } from './deed.ts';
import { hear, type LeadStep, type Led, perform, type Said } from './lead.ts';
import { cardsOf, momentsOf } from './moments.ts';
import { beginningOf, eventsBetween } from './noted.ts';
import { type Act, momentAt, standingAt } from './standing.ts';

/** So many drills, each from a seed of its own. */
const DRILLS = 30;

/** A drill survives so many cuts of the network. */
const CUTS = 20;

const DRILL: Drill = {
  ...SMALL_DRILL,
  run: Array.from({ length: 30 }, (_, n) => SMALL_DRILL.run[n % SMALL_DRILL.run.length]).flatMap(
    (flip) => flip ?? [],
  ),
};
const moments = momentsOf(DRILL);
const children = [childId('child 1'), childId('child 2'), childId('child 3')];
const lots: Lots = {
  present: children,
  draw: (calls, count) =>
    Array.from({ length: count }, (_, n) => children[(calls.length + n) % 3] as ChildId),
};
const id = drillId('drill');
const CLASS = classId('class');

/** A device with a log of its own, as its window keeps a warm-up (web/warm-up/lead-here.ts). */
class Desk {
  readonly name: string;
  readonly log: LogEvent[] = [];
  /** What it has said to the lead and is not answered yet: said again while the network is back. */
  wishes: readonly Said[] = [];
  led: Led;

  constructor(name: string) {
    this.name = name;
    const running = {
      ...{ classId: CLASS, groupId: groupId('whole-class'), drillId: id, drill: DRILL },
      ...{ standing: standingAt(moments.length), blending: 'whole' as const },
      ...{ calling: callNobody([]), dictated: [], asking: null, rehearsed: null },
      ...{ count: 1, by: 'laptop' },
    };
    this.led = { running, waiting: [] };
  }
}

/** A laptop that leads and a phone, between them a network that is slow and can be cut. */
class Room {
  readonly laptop = new Desk('laptop');
  readonly phone = new Desk('phone');
  #ways: Readonly<Record<string, Said[]>> = { laptop: [], phone: [] };
  isCut = false;
  #time = 0;

  press(desk: Desk, deed: Deed): void {
    const done = { id: `${desk.name} ${++this.#time}`, deed };
    this.#take(desk, perform(desk.led, desk.name, done, lots, moments));
  }

  /** Marks what this desk shows, in its own log. */
  mark(desk: Desk): void {
    const moment = momentAt(desk.led.running.standing, moments);
    if (!moment) return;
    const { part, place } = moment;
    const { count } = desk.led.running;
    const body = { drillId: id, part, place, cards: cardsOf(moment), broke: 1, count };
    this.#record(desk, [{ kind: 'marked', body: { ...body, heard: null, child: null } }]);
  }

  /** What was said last to this desk arrives. */
  arrive(desk: Desk): void {
    const said = this.#ways[desk.name]?.shift();
    if (said) this.#take(desk, hear(desk.led, desk.name, said, lots));
  }

  settle(): void {
    while (Object.values(this.#ways).some(({ length }) => length > 0)) {
      this.arrive(this.laptop);
      this.arrive(this.phone);
    }
  }

  /** What is on its way is lost, and what is said from now on. */
  cut(): void {
    this.isCut = true;
    this.#ways = { laptop: [], phone: [] };
  }

  /** The network is back: both ask, the lead says how it stands, and what has no answer is said again. */
  join(): void {
    this.isCut = false;
    const { running } = this.laptop.led;
    this.#say(this.laptop, [{ kind: 'state', running, granted: null }]);
    this.#say(this.phone, this.phone.wishes);
  }

  /** The logs of both as one, as they are once both are in step. */
  all(): readonly LogEvent[] {
    return mergeEvents(this.laptop.log, this.phone.log);
  }

  #take(desk: Desk, step: LeadStep | null): void {
    this.#time++;
    if (!step) return;
    desk.led = step.led;
    const ids = new Set(desk.led.waiting.map((one) => one.id));
    const wishes = [...desk.wishes, ...step.say].filter((said) => said.kind === 'wish');
    desk.wishes = wishes.filter((wish) => ids.has(wish.id));
    this.#say(desk, step.say);
    for (const { before, after, what, late } of step.note) {
      const known = replay(CLASS, desk.log).drills.get(id);
      this.#record(desk, [
        ...(known ? [] : beginningOf(before, '2026-03-02', what !== 'skip')),
        ...eventsBetween(before, after, what, known, late),
      ]);
    }
  }

  #say(from: Desk, said: readonly Said[]): void {
    const to = from === this.laptop ? 'phone' : 'laptop';
    if (!this.isCut) this.#ways[to]?.push(...said);
  }

  #record(desk: Desk, specs: readonly EventSpec[]): void {
    for (const spec of specs) {
      const at = ++this.#time;
      desk.log.push({
        id: eventId(`${desk.name} ${at}`),
        classId: CLASS,
        at,
        by: desk.name,
        ...spec,
      });
    }
  }
}

/** Everything that leads on or back. */
const ANY: readonly Act[] = ['next', 'next', 'next', 'next', 'back', 'sweep', 'skip', 'correct'];

/** What is pressed: mostly next. */
function pressed(random: Random): Deed {
  return { does: 'act', act: ANY[random.below(ANY.length)] ?? 'next' };
}

/** What a drill leaves of each card: how it went, and how often it was marked. */
function left(log: readonly LogEvent[]) {
  const record = replay(CLASS, log).drills.get(id);
  return (record ? evidenceOf(record) : []).map(({ part, place, outcome, marks, corrected }) => ({
    ...{ part, place, outcome, corrected, marks: marks.length },
  }));
}

const seeds = Array.from({ length: DRILLS }, (_, n) => n + 1);

describe('two desks in one warm-up, each with a log of its own', () => {
  it.each(seeds)('leave what one desk leaves, pressed at random (seed %i)', (seed) => {
    const random = makeRandom(seed);
    const [room, twin] = [new Room(), new Room()];
    for (let step = 0; step < 150; step++) {
      const desk = random.fraction() < 0.5 ? room.laptop : room.phone;
      const lot = random.fraction();
      if (lot < 0.5) {
        const deed = pressed(random);
        const before = desk.led.running;
        const [rival, now] = [desk === room.laptop ? room.phone : room.laptop, random.fraction()];
        room.press(desk, deed);
        // One time in three the other presses before it could see that: one of the two counts.
        if (now < 0.33) room.press(rival, deed);
        room.settle();
        // The twin is the one desk, which went the way that the lead went.
        if (desk.led.running !== before) twin.press(twin.laptop, deed);
      } else if (lot < 0.7) {
        room.mark(desk);
        twin.mark(twin.laptop);
      } else room.arrive(desk);
    }
    expect(room.phone.led.running).toEqual(room.laptop.led.running);
    expect(room.laptop.led.running.standing).toEqual(twin.laptop.led.running.standing);
    expect(left(room.all())).toEqual(left(twin.all()));
  });

  it.each(seeds)(
    'lose nothing and double nothing in twenty cuts of the network (seed %i)',
    (seed) => {
      const random = makeRandom(seed);
      const [room, twin] = [new Room(), new Room()];
      const use = (desk: Desk) => {
        for (let times = random.below(4); times > 0; times--) {
          const deed = pressed(random);
          room.press(desk, deed);
          twin.press(twin.laptop, deed);
          if (random.fraction() < 0.3) {
            room.mark(desk);
            twin.mark(twin.laptop);
          }
        }
      };
      for (let cut = 0; cut < CUTS; cut++) {
        // Some of what is under way is lost in the middle: a wish, or its answer.
        use(room.phone);
        for (let arrived = random.below(4); arrived > 0; arrived--) {
          room.arrive(random.fraction() < 0.5 ? room.laptop : room.phone);
        }
        room.cut();
        use(room.phone);
        room.join();
        room.settle();
        use(room.laptop);
        room.settle();
      }
      expect(room.phone.led.running).toEqual(room.laptop.led.running);
      expect(room.phone.led.waiting).toEqual([]);
      expect(room.laptop.led.running.standing).toEqual(twin.laptop.led.running.standing);
      expect(left(room.all())).toEqual(left(twin.all()));
    },
  );

  it.each(seeds)(
    'are one again when both were used while cut off: the lead holds, every mark stays (seed %i)',
    (seed) => {
      const random = makeRandom(seed);
      const room = new Room();
      let marks = 0;
      for (let cut = 0; cut < CUTS; cut++) {
        if (cut % 2 === 1) room.cut();
        for (const desk of [room.phone, room.laptop, room.phone]) {
          room.press(desk, pressed(random));
          const isOver = desk.led.running.standing.at >= desk.led.running.standing.order.length;
          if (random.fraction() < 0.3 && !isOver) {
            room.mark(desk);
            marks++;
          }
        }
        room.join();
        room.settle();
      }
      expect(room.phone.led.running).toEqual(room.laptop.led.running);
      const log = room.all();
      expect(log.filter(({ kind }) => kind === 'marked')).toHaveLength(marks);
      expect(log.filter(({ kind, by }) => kind === 'shown' && by === 'phone')).toEqual([]);
    },
  );
});
