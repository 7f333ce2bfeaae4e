import {
  type ChildId,
  type ClassId,
  childId,
  type DrillId,
  drillId,
  type EventId,
  eventId,
  type GroupId,
  groupId,
} from '../core/ids.ts';
import { type CardId, graphemeOf } from '../core/language/card-id.ts';
import { WHOLE_CLASS } from '../core/log/class-state.ts';
import type { EventSpec, LogEvent } from '../core/log/event.ts';
import { makeRandom, type Random } from '../core/random.ts';
import { standingAt } from './arbitrary-events.ts';

/** Letters for drills of the size that classes run: 15 cards, 8 sounds, 30 flips. */
const beginnings: readonly CardId[] = [
  'b=B',
  'm=M',
  'sh=SH',
  't=T',
  's=S',
] satisfies readonly CardId[];
const vowels: readonly CardId[] = [
  'a=AE',
  'e=EH',
  'i=IH',
  'o=AA',
  'u=AH',
] satisfies readonly CardId[];
const endings: readonly CardId[] = ['t=T', 'p=P', 'g=G', 'n=N', 'ck=K'] satisfies readonly CardId[];
const FLIPS = 30;

/**
 * A class of so many events, as a year and more brings them: an invented class
 * of 24 in three small groups, four drills a day, everything shown, every tenth
 * word marked, some marks said more of, some undone. The same each time.
 */
export function classYear(classId: ClassId, size: number): readonly LogEvent[] {
  const random = makeRandom(60);
  const events: LogEvent[] = [];
  let at = Date.UTC(2026, 7, 31, 8);
  const add = (...specs: readonly EventSpec[]): void => {
    for (const spec of specs) {
      at += 1000 + random.below(9000);
      events.push({ id: idOf(random), classId, at, by: 'device-of-the-desk-1', ...spec });
    }
  };
  const groups = [WHOLE_CLASS, ...Array.from({ length: 3 }, () => groupId(idOf(random)))];
  const children = Array.from({ length: 24 }, () => childId(idOf(random)));
  add({ kind: 'set', body: { of: 'class', id: classId, field: 'name', value: 'Room 4' } });
  for (const id of groups)
    add({ kind: 'set', body: { of: 'group', id, field: 'name', value: id } });
  for (const [n, id] of children.entries()) {
    add(
      { kind: 'set', body: { of: 'child', id, field: 'name', value: `Child ${n}` } },
      {
        kind: 'set',
        body: { of: 'child', id, field: 'group', value: groups[1 + (n % 3)] ?? null },
      },
    );
  }
  for (let day = 0; events.length < size; day++) {
    for (const id of groups) {
      add({
        kind: 'set',
        body: {
          of: 'group',
          id,
          field: 'standing',
          value: standingAt(Math.min(130, day)),
        },
      });
      add(...drillOf(random, drillId(idOf(random)), id, children));
      const mark = events.findLast(({ kind }) => kind === 'marked');
      if (mark) add({ kind: 'undone', body: { event: mark.id } });
    }
  }
  return events.slice(0, size);
}

function drillOf(
  random: Random,
  drillId: DrillId,
  groupId: GroupId,
  children: readonly ChildId[],
): readonly EventSpec[] {
  const run = Array.from({ length: FLIPS }, () => {
    const cards = [beginnings, vowels, endings].map(
      (pile) => pile[random.below(pile.length)] as CardId,
    );
    const word = cards.map(graphemeOf).join('');
    return { cards, word, sounds: ['M', 'AE', 'T'], kind: 'nonsense' } as const;
  });
  const drill = {
    seed: random.bits(),
    visual: [...beginnings, ...vowels, ...endings],
    auditory: vowels.map((id) => ({ phonemes: ['AE'], spellings: [id] }) as const),
    board: { shape: 'cvc', piles: [beginnings, vowels, endings] },
    run,
    shortfall: null,
  };
  const shown = (part: 'visual' | 'auditory' | 'blending', count: number): EventSpec[] =>
    Array.from({ length: count }, (_, place) => ({
      kind: 'shown',
      body: { drillId, part, place },
    }));
  return [
    { kind: 'begun', body: { drillId, groupId, day: '2026-09-01', drill } },
    ...shown('visual', drill.visual.length),
    ...shown('auditory', drill.auditory.length),
    ...shown('blending', FLIPS).flatMap((event, place): EventSpec[] => {
      if (random.below(10) > 0) return [event];
      const moment = { drillId, part: 'blending', place } as const;
      const child = children[random.below(children.length)] ?? null;
      const heard = { kind: 'phoneme', sound: 'IH' } as const;
      const cards = run[place]?.cards ?? [];
      return [
        event,
        { kind: 'marked', body: { ...moment, cards, broke: 2, heard, child } },
        { kind: 'corrected', body: moment },
      ];
    }),
    { kind: 'noted', body: { drillId, groupId, text: 'ă and ĕ again tomorrow' } },
    { kind: 'ended', body: { drillId, complete: true } },
  ];
}

/** Twenty signs, as ids are on a device. */
function idOf(random: Random): EventId {
  return eventId(Array.from({ length: 20 }, () => random.below(36).toString(36)).join(''));
}
