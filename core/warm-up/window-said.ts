/**
 * What the windows of a warm-up tell each other, on this device and, sealed, on others, and whether this
 * build understands it: another may be older or newer, and whatever it does not know it passes over.
 */
import { isChildId, isClassId, isDrillId, isEventId, isGroupId } from '../ids.ts';
import type { DrillEvent } from '../log/event.ts';
import { isDrill } from '../log/is-drill.ts';
import {
  type Check,
  isEither,
  isFlag,
  isListOf,
  isNullOr,
  isObject,
  isOneOf,
  isOptional,
  isShape,
  isText,
  isWhole,
} from '../log/is-value.ts';
import { isEvent } from '../log/parse-event.ts';
import { understand } from '../log/understand.ts';
import type { Deed } from './deed.ts';
import type { Said } from './lead.ts';
import type { Plan, SentPlace } from './sent.ts';
import { type Act, BLENDINGS, type Standing, TURNS } from './standing.ts';

/** What is sent: a plan once, then after each act where it stands; a wish to the lead; a question. */
export type WindowSaid = (
  | { readonly kind: 'ask' }
  | { readonly kind: 'plan'; readonly plan: Plan }
  | { readonly kind: 'place'; readonly place: SentPlace; readonly granted: string | null }
  | Wish
) & {
  /** The other device that it comes from; left out for this one. */
  readonly afar?: string | undefined;
};

type Wish = Extract<Said, { readonly kind: 'wish' }>;

/** Whether a window said something that this build understands. */
export function isWindowSaid(value: unknown): value is WindowSaid {
  if (!isObject(value) || !isOptional(isText)(value.afar)) return false;
  if (value.kind === 'ask') return true;
  if (value.kind === 'plan') return isPlan(value.plan);
  if (value.kind === 'place') return isPlace(value.place) && isNullOr(isText)(value.granted);
  return value.kind === 'wish' && isWish(value);
}

/** No warm-up has so many moments, words or steps of a row; what says otherwise is damaged. */
const isFew = isWhole(0, 9999);

const isStanding = isShape<Standing>({
  order: isListOf(isFew),
  at: isFew,
  shown: isFew,
  sweeps: isWhole(0),
  answer: isFlag,
  spellings: isFlag,
  paused: isFlag,
  turn: isNullOr(isOneOf(TURNS)),
  joined: isFlag,
  dictating: isNullOr(isFew),
  skipped: isListOf(isFew),
});

const isBlending = isOneOf(BLENDINGS);

const isPlan = isShape<Plan>({
  key: isText,
  classId: isClassId,
  groupId: isGroupId,
  drillId: isDrillId,
  drill: isDrill,
  dictated: isListOf(isText),
  who: isListOf(isChildId),
});

const isNoted = isListOf<DrillEvent>(
  (value): value is DrillEvent => isEvent(value) && understand(value) !== null,
);

const isPlaceShape = isShape<SentPlace>({
  plan: isText,
  standing: isStanding,
  blending: isBlending,
  asking: isNullOr(isEventId),
  rehearsed: isNullOr(isNoted),
  count: isWhole(0),
  by: isText,
  on: isFlag,
  readers: isListOf(isNullOr(isFew)),
  upcoming: isListOf(isFew),
});

/** It stands within its order, whose length means the end. */
function isPlace(value: unknown): value is SentPlace {
  return isPlaceShape(value) && value.standing.at <= value.standing.order.length;
}

const ACTS = [
  'next',
  'back',
  'skip',
  'sweep',
  'answer',
  'spellings',
  'pause',
  'correct',
  'dictate',
  'let-go',
] as const satisfies readonly Act[];

const isAct: Check<Act> = isEither(isOneOf(ACTS), isShape({ turn: isFew }));

const DEEDS: { readonly [Does in Deed['does']]: Check<Extract<Deed, { readonly does: Does }>> } = {
  act: isShape({ does: isOneOf(['act']), act: isAct }),
  calling: isShape({ does: isOneOf(['calling']), on: isFlag }),
  call: isShape({ does: isOneOf(['call']), child: isChildId }),
  present: isShape({ does: isOneOf(['present']) }),
  blending: isShape({ does: isOneOf(['blending']), blending: isBlending }),
  dictated: isShape({ does: isOneOf(['dictated']), words: isListOf(isText) }),
  asking: isShape({ does: isOneOf(['asking']), mark: isNullOr(isEventId) }),
  aside: isShape({ does: isOneOf(['aside']), noted: isNoted }),
};

const isDeed: Check<Deed> = (value): value is Deed =>
  Object.values<Check<Deed>>(DEEDS).some((check) => check(value));

const isWish = isShape<Wish>({
  kind: isOneOf(['wish']),
  id: isText,
  drillId: isDrillId,
  from: isWhole(0),
  deed: isDeed,
});
