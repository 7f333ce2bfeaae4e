import { ITEM_MARKS } from '../checks/score-check.ts';
import { isCheckId, isChildId, isDrillId, isEventId, isGroupId, isPapersId } from '../ids.ts';
import { ACCENT_HABITS } from '../language/accent/accent.ts';
import { assembleReading } from '../language/assemble.ts';
import { PHONEMES } from '../language/phonemes.ts';
import { LATEST } from './clock.ts';
import {
  type BrokenAt,
  type DrillPlace,
  type EventBodies,
  type EventKind,
  type KnownEvent,
  type LogEvent,
  NAME_ORDERS,
  PAGES,
  PARTS,
  type PaperAnswer,
  type PapersWord,
  type Setting,
  SLIPS,
  type Slip,
} from './event.ts';
import { isCard, isCards } from './is-card.ts';
import { isForm } from './is-check-form.ts';
import { isDrill } from './is-drill.ts';
import { isGroupPlace } from './is-group-place.ts';
import {
  type Check,
  isEither,
  isFlag,
  isListOf,
  isNullOr,
  isNumber,
  isObject,
  isOneOf,
  isOptional,
  isShape,
  isText,
  isWhole,
} from './is-value.ts';

/**
 * The event as one that we know, or null when its kind or what it says is of
 * another version. Such an event is kept and passed on, and changes nothing
 * here.
 */
export function understand(event: LogEvent): KnownEvent | null {
  return isKnown(event) ? event : null;
}

function isKnown(event: LogEvent): event is KnownEvent {
  return checkByKind.get(event.kind)?.(event.body) === true;
}

const isSlip: Check<Slip> = isEither(
  isShape({ kind: isOneOf(SLIPS) }),
  isEither(
    isShape({ kind: isOneOf(['phoneme']), sound: isOneOf(PHONEMES) }),
    isShape({ kind: isOneOf(['letter']), card: isCard }),
  ),
);

const isDay: Check<string> = (value): value is string =>
  isText(value) && /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/.test(value);

/** No part of a drill is so long; what says otherwise is damaged. */
const LAST_PLACE = 9999;

const momentFields = { drillId: isDrillId, part: isOneOf(PARTS), place: isWhole(0, LAST_PLACE) };
/** What most events of a class say, so each field is named here: that is checked several times as fast. */
const isMoment: Check<DrillPlace> = (value): value is DrillPlace =>
  isObject(value) &&
  momentFields.drillId(value.drillId) &&
  momentFields.part(value.part) &&
  momentFields.place(value.place);
const isCount = isOptional(isWhole(0));
const isShown: Check<EventBodies['shown']> = (value): value is EventBodies['shown'] =>
  isMoment(value) && isCount((value as { readonly count?: unknown }).count);

const isMarkFields = isShape<EventBodies['marked']>({
  ...momentFields,
  cards: isCards,
  broke: isNullOr(isWhole(1)),
  heard: isNullOr(isSlip),
  child: isNullOr(isChildId),
  count: isCount,
});

const isBrokenAt = isShape<BrokenAt>({ card: isWhole(1), heard: isNullOr(isSlip) });

const isPapersWord = isShape<PapersWord>({
  word: isText,
  cards: isCards,
  breaks: isListOf(isWhole(0)),
});

const isPapersFields = isShape<EventBodies['papers-begun']>({
  papersId: isPapersId,
  groupId: isGroupId,
  day: isNullOr(isDay),
  words: isListOf(isPapersWord),
});

const isPapersChange = isShape<EventBodies['papers-changed']>({
  papersId: isPapersId,
  change: isEither(
    isShape({ of: isOneOf(['day']), day: isNullOr(isDay) }),
    isShape({
      of: isOneOf(['word']),
      word: isWhole(0, LAST_PLACE),
      said: isNullOr(isPapersWord),
    }),
  ),
});

const isDaysOff = isShape<EventBodies['no-school']>({ first: isDay, last: isDay, holds: isFlag });

/** Whether the cards of a word are its letters, so that it can be read. */
function isSpelledOut({ word, cards, breaks }: PapersWord): boolean {
  try {
    return assembleReading(word, cards, breaks).cards.length > 0;
  } catch {
    return false;
  }
}

const isAnswer: Check<PaperAnswer> = isEither(
  isShape<Extract<PaperAnswer, { kind: 'wrote' }>>({
    kind: isOneOf(['wrote']),
    text: isText,
    isWord: isOptional(isFlag),
    meant: isOptional(isListOf(isWhole(1))),
  }),
  isEither(
    isShape<Extract<PaperAnswer, { kind: 'broke' }>>({
      kind: isOneOf(['broke']),
      cards: isListOf(isWhole(1)),
    }),
    isShape({ kind: isOneOf(['absent', 'unread']) }),
  ),
);

/** A time in seconds, above 0. */
const isSeconds: Check<number> = (value): value is number => isNumber(value) && value > 0;

/** No row of a form has more items. */
const MOST_AT_ONCE = 100;

const isAmending = isShape({ drillId: isDrillId, mark: isEventId });

const amendmentChecks: ReadonlyMap<unknown, Check<unknown>> = new Map<string, Check<unknown>>([
  ['broke', isNullOr(isWhole(1))],
  ['heard', isNullOr(isSlip)],
  ['child', isNullOr(isChildId)],
]);

const settingChecks: ReadonlyMap<string, Check<unknown>> = new Map<string, Check<unknown>>([
  ['class name', isText],
  ['class archived', isFlag],
  ['class namesBy', isOneOf(NAME_ORDERS)],
  ['class accent', isListOf(isOneOf(ACCENT_HABITS))],
  ['group name', isText],
  ['group removed', isFlag],
  ['group standing', isGroupPlace],
  ['group place', isWhole(0)],
  ['child name', isText],
  ['child group', isNullOr(isGroupId)],
  ['child removed', isFlag],
  ['child place', isWhole(0)],
  ['device name', isText],
]);

const isSettingFields = isShape({ of: isText, id: isText, field: isText });

const checks: { readonly [Kind in EventKind]: Check<EventBodies[Kind]> } = {
  set: (body): body is Setting =>
    isSettingFields(body) &&
    settingChecks.get(`${body.of} ${body.field}`)?.((body as Partial<Setting>).value) === true,
  begun: isShape({ drillId: isDrillId, groupId: isGroupId, day: isDay, drill: isDrill }),
  replanned: isShape({ drillId: isDrillId, drill: isDrill }),
  shown: isShown,
  called: isShape({ ...momentFields, child: isChildId }),
  marked: (body): body is EventBodies['marked'] =>
    isMarkFields(body) && (body.broke ?? 0) <= body.cards.length,
  amended: (body): body is EventBodies['amended'] =>
    isAmending(body) && amends(body as Partial<EventBodies['amended']>),
  corrected: isMoment,
  ended: isShape({ drillId: isDrillId, complete: isFlag }),
  'check-begun': isShape({
    checkId: isCheckId,
    child: isChildId,
    day: isDay,
    form: isForm,
    limit: isNullOr(isSeconds),
  }),
  'check-marked': isShape({
    checkId: isCheckId,
    item: isWhole(0),
    count: isOptional(isWhole(1, MOST_AT_ONCE)),
    outcome: isOneOf(['right', ...ITEM_MARKS]),
    broke: isListOf(isBrokenAt),
  }),
  'check-ended': isShape({
    checkId: isCheckId,
    reached: isWhole(0),
    seconds: isNullOr(isSeconds),
  }),
  'papers-begun': (body): body is EventBodies['papers-begun'] =>
    isPapersFields(body) && body.words.every(isSpelledOut),
  'papers-read': isShape({
    papersId: isPapersId,
    child: isChildId,
    word: isWhole(0, LAST_PLACE),
    answer: isAnswer,
  }),
  'papers-changed': (body): body is EventBodies['papers-changed'] =>
    isPapersChange(body) &&
    (body.change.of === 'day' || body.change.said === null || isSpelledOut(body.change.said)),
  'no-school': (body): body is EventBodies['no-school'] =>
    isDaysOff(body) && body.first <= body.last,
  away: isShape({ child: isChildId, day: isDay, away: isFlag }),
  noted: isShape({ drillId: isNullOr(isDrillId), groupId: isGroupId, text: isText }),
  wrote: isShape({ page: isOneOf(PAGES), about: isEither(isChildId, isGroupId), text: isText }),
  decided: isShape({
    choice: isOneOf(['block', 'allow']),
    about: isOneOf(['word', 'sounds']),
    text: isText,
  }),
  undone: isShape({ event: isEventId }),
  dated: isShape({ event: isEventId, at: isWhole(0, LATEST) }),
};

const checkByKind: ReadonlyMap<string, Check<unknown>> = new Map(Object.entries(checks));

function amends({ field, value }: Partial<EventBodies['amended']>): boolean {
  return amendmentChecks.get(field)?.(value) === true;
}
