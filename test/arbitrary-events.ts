import fc from 'fast-check';
import type { CheckForm } from '../core/checks/check-form.ts';
import { ITEM_MARKS } from '../core/checks/score-check.ts';
import type { Drill } from '../core/drills/drill.ts';
import { type ClassId, childId, classId, eventId } from '../core/ids.ts';
import { WHOLE_CLASS } from '../core/log/class-state.ts';
import { type EventSpec, type LogEvent, PARTS, SLIPS } from '../core/log/event.ts';
import type { GroupPlace } from '../core/log/group-place.ts';
import { EDITION } from '../core/sequence/earlier-orders.ts';

/** A drill of a few cards, enough to be run and marked. */
export const SMALL_DRILL: Drill = {
  seed: 7,
  visual: ['m=M', 'a=AE', 'sh=SH'],
  auditory: [{ phonemes: ['K'], spellings: ['c=K', 'k=K'] }],
  board: { shape: 'cvc', piles: [['m=M', 'sh=SH'], ['a=AE'], ['t=T', 'p=P']] },
  run: [
    { cards: ['m=M', 'a=AE', 't=T'], word: 'mat', sounds: ['M', 'AE', 'T'], kind: 'real' },
    { cards: ['m=M', 'a=AE', 'p=P'], word: 'map', sounds: ['M', 'AE', 'P'], kind: 'real' },
    { cards: ['sh=SH', 'a=AE', 'p=P'], word: 'shap', sounds: ['SH', 'AE', 'P'], kind: 'nonsense' },
  ],
  shortfall: null,
};

/** The same without its first word. */
export const CHANGED_DRILL: Drill = { ...SMALL_DRILL, run: SMALL_DRILL.run.slice(1) };

/** A form of two nonsense words. */
export const SMALL_FORM: CheckForm = {
  kind: 'nonsense-words',
  seed: 3,
  items: [
    { text: 'mip', cards: ['m=M', 'i=IH', 'p=P'], answers: [['M', 'IH', 'P']] },
    { text: 'shab', cards: ['sh=SH', 'a=AE', 'b=B'], answers: [['SH', 'AE', 'B']] },
  ],
  hardness: 0,
  offBy: 0,
};

/** A standing in the built-in order, by number alone. */
export function standingAt(upTo: number): GroupPlace {
  return { own: null, edition: EDITION, upTo, at: [], added: [], dropped: [] };
}

/**
 * Logs of one class, for laws that must hold of every log. Times and the things
 * spoken of come from small pools, so that events fall on one moment, repeat
 * each other, undo each other in chains and circles, and come before what they
 * speak of; some are of kinds or say things that only a newer version knows.
 */
export function arbitraryEvents(of = 'class'): fc.Arbitrary<readonly LogEvent[]> {
  return fc
    .uniqueArray(fc.string({ minLength: 1, maxLength: 3 }), { maxLength: 40 })
    .chain((ids) => fc.tuple(...ids.map((id) => arbitraryEvent(classId(of), id, ids))));
}

/** The same events in another order, some of them twice. */
export function shuffledWithRepeats<Event>(
  events: readonly Event[],
): fc.Arbitrary<readonly Event[]> {
  return fc
    .tuple(
      fc.shuffledSubarray([...events], { minLength: events.length }),
      fc.shuffledSubarray([...events]),
    )
    .map(([all, again]) => [...all, ...again]);
}

function arbitraryEvent(
  ofClass: ClassId,
  id: string,
  ids: readonly string[],
): fc.Arbitrary<LogEvent> {
  return fc
    .record({
      id: fc.constant(eventId(id)),
      classId: fc.constant(ofClass),
      at: fc.nat(12),
      by: fc.constantFrom('desk', 'tablet'),
      said: fc.oneof({ weight: 9, arbitrary: arbitrarySpec(ids) }, { weight: 1, arbitrary: newer }),
    })
    .map(({ said, ...stamp }) => ({ ...stamp, ...said }));
}

const text = fc.constantFrom('', 'Robin', 'Moss group', 'ă and ĕ again');
const drillId = fc.constantFrom('drill 1', 'drill 2');
const groupId = fc.constantFrom(WHOLE_CLASS, 'group 1', 'group 2');
const child = fc.constantFrom('child 1', 'child 2');
const papersId = fc.constantFrom('papers 1', 'papers 2');
const checkId = fc.constantFrom('check 1', 'check 2');
const maybeChild = fc.option(child, { nil: null });
const moment = { drillId, part: fc.constantFrom(...PARTS), place: fc.nat(2) };
const broke = fc.option(fc.integer({ min: 1, max: 3 }), { nil: null });
const heard = fc.option(
  fc.oneof(
    fc.record({ kind: fc.constantFrom(...SLIPS) }),
    fc.constant({ kind: 'phoneme', sound: 'IH' } as const),
  ),
  { nil: null },
);

/** Things that only a newer version says. */
const newer = fc.constantFrom(
  { kind: 'sung', body: { song: 'of the short vowels' } },
  { kind: 'set', body: { of: 'child', id: childId('child 1'), field: 'color', value: 'red' } },
  { kind: 'shown', body: { drillId: 'drill 1', part: 'spelling', place: 0 } },
);

function arbitrarySpec(ids: readonly string[]): fc.Arbitrary<EventSpec> {
  const id = fc.constantFrom(...ids);
  const bodies: { readonly [Kind in EventSpec['kind']]: fc.Arbitrary<unknown> } = {
    set: fc.oneof(
      fc.record({
        of: fc.constant('class'),
        id: fc.constant('class'),
        field: fc.constant('name'),
        value: text,
      }),
      fc.record({
        of: fc.constant('group'),
        id: groupId,
        field: fc.constant('standing'),
        value: fc.nat(9).map(standingAt),
      }),
      fc.record({
        of: fc.constantFrom('group', 'child'),
        id: fc.oneof(groupId, child),
        field: fc.constant('name'),
        value: text,
      }),
      fc.record({
        of: fc.constantFrom('group', 'child'),
        id: fc.oneof(groupId, child),
        field: fc.constant('removed'),
        value: fc.boolean(),
      }),
      fc.record({
        of: fc.constant('child'),
        id: child,
        field: fc.constant('group'),
        value: fc.option(groupId, { nil: null }),
      }),
    ),
    begun: fc.record({
      drillId,
      groupId,
      day: fc.constantFrom('2026-03-02', '2026-03-03'),
      drill: fc.constant(SMALL_DRILL),
    }),
    replanned: fc.record({ drillId, drill: fc.constantFrom(SMALL_DRILL, CHANGED_DRILL) }),
    shown: fc.record(moment),
    called: fc.record({ ...moment, child }),
    marked: fc.record({
      ...moment,
      cards: fc.constant(['m=M', 'a=AE', 't=T']),
      broke,
      heard,
      child: maybeChild,
    }),
    amended: fc.oneof(
      fc.record({ drillId, mark: id, field: fc.constant('broke'), value: broke }),
      fc.record({ drillId, mark: id, field: fc.constant('heard'), value: heard }),
      fc.record({ drillId, mark: id, field: fc.constant('child'), value: maybeChild }),
    ),
    corrected: fc.record(moment),
    ended: fc.record({ drillId, complete: fc.boolean() }),
    'check-begun': fc.record({
      checkId,
      child,
      day: fc.constantFrom('2026-03-02', '2026-03-03'),
      form: fc.constant(SMALL_FORM),
      limit: fc.constantFrom(60, null),
    }),
    'check-marked': fc.record(
      {
        checkId,
        item: fc.nat(2),
        count: fc.constant(2),
        outcome: fc.constantFrom('right', ...ITEM_MARKS),
        broke: fc.array(fc.record({ card: fc.integer({ min: 1, max: 4 }), heard }), {
          maxLength: 2,
        }),
      },
      { requiredKeys: ['checkId', 'item', 'outcome', 'broke'] },
    ),
    'check-ended': fc.record({
      checkId,
      reached: fc.nat(3),
      seconds: fc.constantFrom(60, null),
    }),
    'papers-begun': fc.record({
      papersId,
      groupId,
      day: fc.constantFrom('2026-03-02', null),
      words: fc.constant([
        { word: 'ship', cards: ['sh=SH', 'i=IH', 'p=P'], breaks: [] },
        { word: 'lake', cards: ['l=L', 'a_e=EY', 'k=K'], breaks: [] },
      ]),
    }),
    'papers-read': fc.record({
      papersId,
      child,
      word: fc.nat(2),
      answer: fc.constantFrom(
        { kind: 'wrote', text: 'sip' },
        { kind: 'wrote', text: '', isWord: false },
        { kind: 'broke', cards: [1] },
        { kind: 'absent' },
        { kind: 'wrote', text: 'sip', meant: [1] },
        { kind: 'unread' },
      ),
    }),
    'papers-changed': fc.record({
      papersId,
      change: fc.oneof(
        fc.record({ of: fc.constant('day'), day: fc.constantFrom('2026-03-03', null) }),
        fc.record({
          of: fc.constant('word'),
          word: fc.nat(3),
          said: fc.constantFrom({ word: 'sip', cards: ['s=S', 'i=IH', 'p=P'], breaks: [] }, null),
        }),
      ),
    }),
    'no-school': fc.record({
      first: fc.constantFrom('2026-03-02', '2026-03-03'),
      last: fc.constantFrom('2026-03-03', '2026-03-06'),
      holds: fc.boolean(),
    }),
    away: fc.record({
      child,
      day: fc.constantFrom('2026-03-02', '2026-03-03'),
      away: fc.boolean(),
    }),
    noted: fc.record({ drillId: fc.option(drillId, { nil: null }), groupId, text }),
    wrote: fc.record({
      page: fc.constantFrom('meeting', 'family'),
      about: child,
      text,
    }),
    decided: fc.record({
      choice: fc.constantFrom('block', 'allow'),
      about: fc.constant('word'),
      text: fc.constantFrom('bat', 'mud'),
    }),
    dated: fc.record({ event: id, at: fc.nat(12) }),
    undone: fc.record({ event: id }),
  };
  const specs = Object.entries(bodies).map(([kind, body]) =>
    fc.record({ kind: fc.constant(kind), body }),
  );
  // Undoings are what makes order hard; they come more often than the rest.
  return fc.oneof(...specs, specs.at(-1) as (typeof specs)[number]) as fc.Arbitrary<EventSpec>;
}
