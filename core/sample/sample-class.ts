/**
 * A class to look at: twelve school weeks of invented children, with warm-ups of the whole class and of
 * two small groups, marks, checks and spelling papers, ending the school day before `today`. Made by the
 * engine from one seed, school day by school day, so that whoever asks can rest in between; it is a class
 * like any other and is told by its id alone.
 */

import type { CheckForm } from '../checks/check-form.ts';
import { nextForm } from '../checks/next-form.ts';
import { dictationWords } from '../dictation/words.ts';
import { buildDrill } from '../drills/build-drill.ts';
import type { DrillEngine } from '../drills/drill-spec.ts';
import {
  type ChildId,
  checkId,
  childId,
  classId,
  drillId,
  eventId,
  type GroupId,
  papersId,
} from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import { type Day, makeDay, weekdayOf } from '../learners/day.ts';
import { WHOLE_CLASS } from '../log/class-state.ts';
import type { DrillPlace, EventSpec, LogEvent, PapersWord } from '../log/event.ts';
import { makeGroupPlace } from '../log/group-place.ts';
import { parseWords } from '../papers/said-words.ts';
import { makeRandom, type Random, shuffled } from '../random.ts';
import { SEQUENCE } from '../sequence/built-in.ts';
import { makeProgress } from '../sequence/progress.ts';
import { taughtUpTo } from '../sequence/teach.ts';
import { MAPLE, SAMPLE_CHILDREN, type SampleChild, WILLOW } from './sample-children.ts';
import { readAsChild } from './sample-reading.ts';
import { writeAsChild } from './sample-spelling.ts';

/** The id of the sample class; no class of hers has it, since ids are drawn by chance. */
export const SAMPLE_CLASS = classId('sample-class');

const WEEKS = 12;
/** School days of the sample class, for whoever shows how far it is made. */
export const SAMPLE_DAYS = WEEKS * 5;

/** How far each group is in the built-in order when the weeks begin and when they end, as a share of it. */
const PACE: ReadonlyMap<GroupId, readonly [number, number]> = new Map([
  [WHOLE_CLASS, [0.2, 0.36]],
  [MAPLE, [0.24, 0.42]],
  [WILLOW, [0.17, 0.3]],
]);
const NAMES = new Map([
  [MAPLE, 'Maple'],
  [WILLOW, 'Willow'],
]);

/** The events of the sample class up to the school day before `today`, a batch for each school day. */
export function* sampleClass(
  engine: DrillEngine,
  today: Day,
): Generator<readonly LogEvent[], void, void> {
  const random = makeRandom(SEED);
  const days = schoolDaysBefore(today, SAMPLE_DAYS);
  const forms: CheckForm[] = [];
  let count = 0;
  for (const [at, day] of days.entries()) {
    const specs = [
      ...(at === 0 ? rosterOf() : []),
      ...(at % 5 === 0 ? placesIn(at) : []),
      ...warmUps(at, day, engine, random),
      ...(at % 30 === 27 ? checksOn(at, day, engine, forms, random) : []),
      ...(at % 15 === 13 ? papersOn(at, day, engine, random) : []),
    ];
    let time = day * DAY + NINE;
    yield specs.map((spec): LogEvent => {
      time += secondsBefore(spec) * 1000;
      const id = eventId(`sample-${count++}`);
      return { id, classId: SAMPLE_CLASS, at: time, by: 'sample', ...spec };
    });
  }
}

/**
 * How many seconds pass before something happens, as in a classroom: a card is named in three, a sound is
 * said, repeated and written in nine, a word is blended in four. Common practice, no source.
 */
function secondsBefore(spec: EventSpec): number {
  if (spec.kind === 'shown') return SHOWN[spec.body.part];
  if (spec.kind === 'corrected') return 4;
  return spec.kind === 'called' ? 0.1 : 1;
}

const SHOWN = { visual: 3, auditory: 9, blending: 4 } as const;
const SEED = 12;
const DAY = 86_400_000;
const NINE = 9 * 3_600_000;

/** Monday to Friday, the latest before a day, in their order. */
function schoolDaysBefore(today: Day, count: number): readonly Day[] {
  const days: Day[] = [];
  for (let day = today - 1; days.length < count; day--) if (weekdayOf(day) < 5) days.push(day);
  return days.reverse();
}

const idOf = ({ name }: SampleChild): ChildId => childId(`sample-${name}`);

function rosterOf(): readonly EventSpec[] {
  return [
    { kind: 'set', body: { of: 'class', id: SAMPLE_CLASS, field: 'name', value: 'Sample class' } },
    ...[...NAMES].map(([id, value]): EventSpec => {
      return { kind: 'set', body: { of: 'group', id, field: 'name', value } };
    }),
    ...SAMPLE_CHILDREN.flatMap((each): readonly EventSpec[] => [
      { kind: 'set', body: { of: 'child', id: idOf(each), field: 'name', value: each.name } },
      { kind: 'set', body: { of: 'child', id: idOf(each), field: 'group', value: each.group } },
    ]),
  ];
}

function stepOn(group: GroupId, at: number): number {
  const [from, to] = PACE.get(group) as readonly [number, number];
  const week = Math.floor(at / 5);
  return Math.round((from + ((to - from) * week) / (WEEKS - 1)) * SEQUENCE.steps.length);
}

function placesIn(at: number): readonly EventSpec[] {
  return [...PACE.keys()].map((id): EventSpec => {
    const value = makeGroupPlace(makeProgress(SEQUENCE, stepOn(id, at)), SEQUENCE);
    return { kind: 'set', body: { of: 'group', id, field: 'standing', value } };
  });
}

/** For how many school days a group has been taught a card. */
function daysSince(group: GroupId, at: number): (card: CardId) => number {
  return (card) => {
    const taught = SEQUENCE.steps.findIndex(({ items }) =>
      items.some((item) => item.kind === 'card' && item.id === card),
    );
    let day = at;
    while (day > 0 && stepOn(group, day - 1) > taught) day--;
    return day === 0 ? SAMPLE_DAYS : at - day;
  };
}

/** The whole class three days a week, each small group on one of the others. */
function warmUps(at: number, day: Day, engine: DrillEngine, random: Random): readonly EventSpec[] {
  const group = [WHOLE_CLASS, MAPLE, WHOLE_CLASS, WILLOW, WHOLE_CLASS][at % 5] as GroupId;
  const children = SAMPLE_CHILDREN.filter(
    (each) => group === WHOLE_CLASS || each.group === group,
  ).filter(({ away }) => random.fraction() >= away);
  const step = stepOn(group, at);
  const drill = buildDrill(
    {
      taught: taughtUpTo(SEQUENCE, step),
      newest: (SEQUENCE.steps[step - 1]?.items ?? []).flatMap((item) =>
        item.kind === 'card' ? [item.id] : [],
      ),
      seed: at,
      flips: group === WHOLE_CLASS ? 20 : 12,
    },
    engine,
  );
  const id = drillId(`sample-drill-${at}`);
  const since = daysSince(group, at);
  const turns = shuffled(children, random);
  const read = drill.run.flatMap(({ cards }, place): readonly EventSpec[] => {
    const reader = turns[place % turns.length] as SampleChild;
    const moment: DrillPlace = { drillId: id, part: 'blending', place };
    const child = idOf(reader);
    const up: readonly EventSpec[] = [
      { kind: 'shown', body: moment },
      { kind: 'called', body: { ...moment, child } },
    ];
    const reading = readAsChild(reader, cards, since, random);
    if (!reading) return up;
    return [
      ...up,
      { kind: 'marked', body: { ...moment, cards, ...reading, child } },
      { kind: 'corrected', body: moment },
    ];
  });
  const others = (['visual', 'auditory'] as const).flatMap((part) =>
    drill[part].map((_, place): EventSpec => {
      return { kind: 'shown', body: { drillId: id, part, place } };
    }),
  );
  return [
    { kind: 'begun', body: { drillId: id, groupId: group, day: makeDay(day), drill } },
    ...others,
    ...read,
    { kind: 'ended', body: { drillId: id, complete: true } },
  ];
}

/** A check of nonsense words with every child, at half time and at the end. */
function checksOn(
  at: number,
  day: Day,
  engine: DrillEngine,
  forms: CheckForm[],
  random: Random,
): readonly EventSpec[] {
  return SAMPLE_CHILDREN.flatMap((each): readonly EventSpec[] => {
    const group = each.group ?? WHOLE_CLASS;
    const taught = taughtUpTo(SEQUENCE, stepOn(group, at));
    const child = idOf(each);
    const { form } = nextForm(
      { kind: 'nonsense-words', count: 20, child, own: [], all: forms },
      { taught, ...engine },
    );
    forms.push(form);
    const id = checkId(`sample-check-${at}-${each.name}`);
    const since = daysSince(group, at);
    const marks = form.items.flatMap(({ cards }, item): readonly EventSpec[] => {
      const reading = readAsChild(each, cards, since, random);
      if (!reading) return [];
      const broke = [{ card: reading.broke, heard: reading.heard }];
      return [{ kind: 'check-marked', body: { checkId: id, item, outcome: 'wrong', broke } }];
    });
    return [
      { kind: 'check-begun', body: { checkId: id, child, day: makeDay(day), form, limit: 60 } },
      ...marks,
      { kind: 'check-ended', body: { checkId: id, reached: form.items.length, seconds: 60 } },
    ];
  });
}

/** A pile of spelling papers of the whole class every third week. */
function papersOn(at: number, day: Day, engine: DrillEngine, random: Random): readonly EventSpec[] {
  const step = stepOn(WHOLE_CLASS, at);
  const dictated = dictationWords(
    {
      taught: taughtUpTo(SEQUENCE, step),
      newest: SEQUENCE.steps[step - 1]?.items ?? [],
      count: 6,
    },
    engine,
    random,
  );
  const { words } = parseWords(dictated.map(({ text }) => text).join(' '), engine.lexicon);
  const id = papersId(`sample-papers-${at}`);
  const written = words.flatMap((said: PapersWord, word) =>
    SAMPLE_CHILDREN.map((each): EventSpec => {
      const answer = { kind: 'wrote', text: writeAsChild(each, said, random) } as const;
      return { kind: 'papers-read', body: { papersId: id, child: idOf(each), word, answer } };
    }),
  );
  return [
    {
      kind: 'papers-begun',
      body: { papersId: id, groupId: WHOLE_CLASS, day: makeDay(day), words },
    },
    ...written,
  ];
}
