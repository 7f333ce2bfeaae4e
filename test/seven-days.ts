import {
  type ChildId,
  childId,
  classId,
  drillId,
  eventId,
  type GroupId,
  groupId,
} from '../core/ids.ts';
import type { CardId } from '../core/language/card-id.ts';
import { isPhoneme } from '../core/language/phonemes.ts';
import { type Day, makeDay } from '../core/learners/day.ts';
import { WHOLE_CLASS } from '../core/log/class-state.ts';
import type { EventSpec, LogEvent, Slip } from '../core/log/event.ts';
import { SEQUENCE } from '../core/sequence/built-in.ts';
import { stepOf } from '../core/sequence/step-of.ts';
import { standingAt } from './arbitrary-events.ts';
import { scriptedReadings } from './scripted-readings.ts';

/** A child of the story: its small group, and the words that it read alone on each of seven days, as in scripted-readings.ts. */
export interface StoryChild {
  readonly group: 'oak' | 'fern' | null;
  readonly days: readonly string[];
}

/**
 * Seven school days of twenty invented children. Oak and those in no group stand where
 * clusters were taught; Fern stands before digraphs, and reads `sh` with the whole class.
 * On the first, third, fifth and seventh day the whole class reads, on the others each group.
 */
export const STORY_CHILDREN: Readonly<Record<string, StoryChild>> = {
  Ines: {
    group: 'oak',
    days: [
      'h-i-d!2:EH s-u-n l-e-t',
      's-i-t!2:EH t-o-p b-u-g',
      's-i-t!2:EH h-o-t p-e-n',
      'h-i-d t-o-p b-u-g',
      'sh-i-p!2:EH r-a-n p-e-n',
      'f-i-n!2:EH m-a-p s-u-n',
      'f-i-n!2:EH c-u-p d-a-d',
    ],
  },
  Kofi: {
    group: 'oak',
    days: [
      'f-i-n!2:EH m-e-t c-u-p',
      'f-i-n!2:EH m-e-t p-e-n',
      'f-i-n!2:EH b-e-d m-e-t',
      'sh-i-p h-o-t m-e-t',
      's-i-t!2:EH m-a-p b-u-g',
      'f-i-n!2:EH h-o-t m-e-t',
      'h-i-d!2:EH l-e-t b-u-g',
    ],
  },
  Wren: {
    group: 'oak',
    days: [
      'f-i-n!2:EH h-o-t s-u-n',
      'f-i-n!2:EH c-u-p d-a-d',
      's-i-t!2:EH l-e-t c-u-p',
      'f-i-n h-o-t d-a-d',
      's-i-t!2:EH l-e-t d-a-d',
      's-i-t!2:EH b-e-d g-o-t',
      'h-i-d!2:EH p-e-n d-a-d',
    ],
  },
  Amir: {
    group: 'oak',
    days: [
      'pr-o-p fl-a-t!1:F m-e-t',
      'pr-a-m!1:P pr-o-p!1:P f-i-n',
      'st-e-m!1:S fl-a-t!1:F f-i-n',
      'st-o-p!1:S pr-o-p m-a-p',
      'pr-a-m pr-o-p!1:P g-o-t',
      'st-o-p!1:S bl-e-d!1:B s-u-n',
      'pr-o-p!1:P st-e-m!1:S m-a-p',
    ],
  },
  Beatriz: {
    group: 'oak',
    days: [
      'st-e-m st-o-p!1:S f-i-n',
      'bl-e-d!1:B bl-o-t!1:B h-o-t',
      'fl-a-t!1:F bl-o-t!1:B h-i-d',
      'pr-o-p!1:P bl-e-d b-e-d',
      'bl-e-d pr-o-p!1:P h-i-d',
      'st-o-p!1:S bl-e-d!1:B b-e-d',
      'fl-a-t!1:F pr-o-p!1:P s-i-t',
    ],
  },
  Cato: {
    group: 'oak',
    days: [
      'st-e-m st-o-p!1:S d-a-d',
      'pr-o-p!1:P bl-e-d!1:B b-e-d',
      'bl-o-t!1:B pr-o-p!1:P c-u-p',
      'pr-a-m!1:P bl-e-d p-e-n',
      'pr-o-p pr-a-m!1:P r-a-n',
      'pr-o-p!1:P bl-o-t!1:B p-e-n',
      'pr-a-m!1:P bl-o-t!1:B t-o-p',
    ],
  },
  Dalia: {
    group: 'oak',
    days: [
      'st-e-m bl-o-t!1:B s-i-t',
      'st-o-p!1:S bl-e-d!1:B g-o-t',
      'st-o-p!1:S bl-o-t!1:B b-e-d',
      'fl-a-t!1:F pr-o-p h-i-d',
      'pr-a-m st-e-m!1:S b-u-g',
      'st-o-p!1:S pr-a-m!1:P s-i-t',
      'fl-a-t!1:F st-e-m!1:S r-a-n',
    ],
  },
  Esi: {
    group: 'oak',
    days: [
      'bl-o-t!1:left-out pr-a-m!1:left-out b-u-g',
      'pr-a-m st-e-m h-o-t',
      'bl-o-t!1:left-out st-e-m!1:left-out b-e-d',
      'bl-o-t st-o-p s-u-n',
      'pr-o-p!1:left-out bl-o-t!1:left-out h-i-d',
      'bl-e-d bl-o-t h-i-d',
      'st-e-m!1:left-out pr-o-p!1:left-out m-e-t',
    ],
  },
  Finn: {
    group: 'oak',
    days: [
      'pr-o-p!1:left-out pr-a-m!1:left-out m-e-t',
      'st-e-m bl-o-t h-o-t',
      'st-e-m!1:left-out bl-e-d!1:left-out f-i-n',
      'pr-a-m st-e-m r-a-n',
      'bl-o-t!1:left-out st-o-p!1:left-out m-e-t',
      'pr-o-p bl-e-d b-e-d',
      'st-o-p!1:left-out pr-o-p!1:left-out s-i-t',
    ],
  },
  Greta: {
    group: null,
    days: [
      't-o-p b-e-d ch-i-p w-i-th',
      'c-u-p m-e-t t-o-p r-a-n',
      'f-i-sh f-i-n th-i-n m-a-p',
      'm-e-t ch-i-p c-u-p r-a-n',
      'w-i-th c-u-p h-i-d t-o-p',
      'sh-i-p f-i-sh w-i-th b-e-d',
      'b-e-d c-u-p f-i-sh s-u-n',
    ],
  },
  Hiro: {
    group: null,
    days: [
      'b-e-d d-a-d!1:B p-e-n',
      'b-e-d!1:D d-a-d s-i-t',
      'b-e-d d-a-d h-o-t',
      'b-e-d!1:D d-a-d!1:B p-e-n',
      'b-e-d d-a-d p-e-n',
      'b-e-d!1:D d-a-d s-i-t',
      'b-e-d d-a-d!1:B s-i-t',
    ],
  },
  Ivo: {
    group: null,
    days: ['', '', '', '', '', '', ''],
  },
  Juno: {
    group: null,
    days: ['', 'd-a-d!', '', '', 'b-e-d!', '', ''],
  },
  Kaia: {
    group: null,
    days: [
      'p-e-n!2:letter-name h-o-t!2:letter-name',
      'h-o-t m-a-p',
      'h-o-t!2:letter-name p-e-n!2:letter-name',
      'm-a-p p-e-n',
      'p-e-n!2:letter-name h-o-t!2:letter-name',
      'h-o-t m-a-p',
      'm-a-p!2:letter-name h-o-t!2:letter-name',
    ],
  },
  Levi: {
    group: null,
    days: [
      'ch-i-p!1:K h-i-d t-o-p',
      'ch-i-p!1:K f-i-n h-o-t',
      'ch-i-p f-i-n r-a-n',
      'ch-i-p s-i-t l-e-t',
      'ch-i-p l-e-t p-e-n',
      'ch-i-p s-i-t h-i-d',
      'ch-i-p b-u-g s-i-t',
    ],
  },
  Maude: {
    group: null,
    days: [
      'th-i-n r-a-n p-e-n',
      'th-i-n m-e-t h-o-t',
      'th-i-n s-i-t d-a-d',
      'th-i-n h-i-d f-i-n',
      'th-i-n g-o-t r-a-n',
      'th-i-n!1:F p-e-n t-o-p',
      'th-i-n d-a-d h-o-t',
    ],
  },
  Nils: {
    group: 'fern',
    days: [
      'b-e-d m-a-p sh-o-p',
      'b-e-d d-a-d',
      'c-u-p s-u-n sh-o-p!1:S',
      's-u-n m-e-t',
      'h-o-t b-e-d sh-o-p',
      'b-e-d m-a-p',
      't-o-p s-i-t sh-o-p!1:S',
    ],
  },
  Orla: {
    group: 'fern',
    days: [
      'c-u-p p-e-n sh-o-p!1',
      's-u-n p-e-n',
      'c-u-p!2:AA s-i-t sh-o-p!1',
      'c-u-p!2:AA h-o-t',
      's-u-n!2:AA p-e-n sh-o-p!1',
      'c-u-p!2:AA s-i-t',
      'b-u-g!2:AA h-o-t sh-o-p!1',
    ],
  },
  Pia: {
    group: 'fern',
    days: [
      'm-e-t h-o-t sh-o-p',
      'b-u-g t-o-p',
      'p-e-n f-i-n sh-o-p!1:S',
      'm-a-p d-a-d',
      'h-o-t f-i-n sh-o-p',
      'b-u-g f-i-n',
      'g-o-t d-a-d sh-o-p!1:S',
    ],
  },
  Quim: {
    group: 'fern',
    days: ['', '', '', 'm-a-p!2:EH s-i-t', '', '', ''],
  },
};

/** Where they stand in our order: the class and Oak after the clusters at the beginning, Fern after the letters. */
export const STORY_STEPS = {
  oak: stepWith('fl=F+L'),
  fern: stepWith('v=V'),
} as const;

const STEPS = [
  [WHOLE_CLASS, STORY_STEPS.oak],
  [groupId('oak'), STORY_STEPS.oak],
  [groupId('fern'), STORY_STEPS.fern],
] as const;

function stepWith(id: CardId): number {
  return stepOf(SEQUENCE, { kind: 'card', id }) ?? Number.NaN;
}

/** The events of the story, whose first school day is a Monday. */
export function sevenDays(monday: Day): readonly LogEvent[] {
  const specs: EventSpec[] = [
    { kind: 'set', body: { of: 'class', id: classId('room'), field: 'name', value: 'Room 7' } },
    ...STEPS.flatMap(([id, step]): readonly EventSpec[] => [
      { kind: 'set', body: { of: 'group', id, field: 'standing', value: standingAt(step) } },
      ...(id === WHOLE_CLASS
        ? []
        : [{ kind: 'set', body: { of: 'group', id, field: 'name', value: capital(id) } } as const]),
    ]),
    ...Object.entries(STORY_CHILDREN).flatMap(([name, { group }]): readonly EventSpec[] => [
      { kind: 'set', body: { of: 'child', id: childId(name), field: 'name', value: name } },
      {
        kind: 'set',
        body: { of: 'child', id: childId(name), field: 'group', value: group && groupId(group) },
      },
    ]),
    ...storyDays(monday).flatMap(drillsOn),
  ];
  return specs.map((spec, n) => ({
    id: eventId(`e${String(n).padStart(5, '0')}`),
    classId: classId('room'),
    at: 1000 + n,
    by: 'desk',
    ...spec,
  }));
}

/** The seven school days from a Monday on. */
export function storyDays(monday: Day): readonly Day[] {
  return [0, 1, 2, 3, 4, 7, 8].map((days) => monday + days);
}

function drillsOn(day: Day, at: number): readonly EventSpec[] {
  const all = Object.entries(STORY_CHILDREN);
  if (at % 2 === 0) return drillOf(WHOLE_CLASS, day, at, all);
  return [groupId('oak'), groupId('fern'), null].flatMap((group) =>
    drillOf(
      group ?? WHOLE_CLASS,
      day,
      at,
      all.filter(([, child]) => child.group === group),
    ),
  );
}

function drillOf(
  groupId: GroupId,
  day: Day,
  at: number,
  children: readonly (readonly [string, StoryChild])[],
): readonly EventSpec[] {
  const readings = children.flatMap(([name, { days }]) =>
    scriptedReadings(childId(name), day, days[at] ?? ''),
  );
  const id = drillId(`${groupId} ${day}`);
  const drill = {
    seed: 1,
    visual: [],
    auditory: [],
    board: { shape: 'syllable', piles: [[], [], []] },
    run: readings.map(({ cards }) => ({
      cards,
      word: 'mip',
      sounds: [],
      kind: 'nonsense' as const,
    })),
    shortfall: null,
  };
  return [
    { kind: 'begun', body: { drillId: id, groupId, day: makeDay(day), drill } },
    ...readings.flatMap(({ child, cards, right, broke, heard }, place): readonly EventSpec[] => {
      const moment = { drillId: id, part: 'blending', place } as const;
      const called: readonly EventSpec[] = [
        { kind: 'shown', body: moment },
        { kind: 'called', body: { ...moment, child: child as ChildId } },
      ];
      if (right) return called;
      return [
        ...called,
        { kind: 'marked', body: { ...moment, cards, broke, heard: slipOf(heard), child } },
      ];
    }),
    { kind: 'ended', body: { drillId: id, complete: true } },
  ];
}

function slipOf(heard: string | null): Slip | null {
  if (heard === null) return null;
  return isPhoneme(heard) ? { kind: 'phoneme', sound: heard } : ({ kind: heard } as Slip);
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
