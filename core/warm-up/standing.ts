import { isSightId } from '../language/card-id.ts';
import { type Moment, stepsOf } from './moments.ts';
import { turnedTo } from './turned.ts';

/** The turns of a correction: she models, all together, the children alone. */
export const TURNS = ['my', 'our', 'your'] as const;
export type Turn = (typeof TURNS)[number];

/**
 * How a row is blended: all cards at once; one sound at a time; or joined
 * sounds: the cards open one after another, and each time all that are open are
 * swept.
 */
export const BLENDINGS = ['whole', 'sounds', 'joined'] as const;
export type Blending = (typeof BLENDINGS)[number];

/**
 * Where the warm-up stands: a plain value, the same in every window. `order`
 * holds moments by their number, since one that broke comes again later; `at`
 * is the place in that order (its length means the end). `shown` is how many
 * cards of the row lie open when sounds come one at a time, the rest what she
 * asked to see.
 */
export interface Standing {
  readonly order: readonly number[];
  readonly at: number;
  readonly shown: number;
  /** How often the row was swept; the line runs again at each count. */
  readonly sweeps: number;
  /** Whether the answer shows: that a word is real or not; of a word known by sight, its part to learn. */
  readonly answer: boolean;
  readonly spellings: boolean;
  readonly paused: boolean;
  /** Whose turn it is while a word is corrected, else null. */
  readonly turn: Turn | null;
  /** Whether the row was swept in this turn. */
  readonly joined: boolean;
  /** Which word is dictated, counted from 0; null when none is. */
  readonly dictating: number | null;
  /** Places of the order that were skipped. */
  readonly skipped: readonly number[];
}

/** What she can do; `turn` turns the card of one pile, counted from 0. */
export type Act =
  | 'next'
  | 'back'
  | 'skip'
  | 'sweep'
  | 'answer'
  | 'spellings'
  | 'pause'
  | 'correct'
  | 'dictate'
  | 'let-go'
  | { readonly turn: number };

/** How the warm-up is run. */
export interface Manner {
  readonly moments: readonly Moment[];
  readonly blending: Blending;
  /** How many words there are to dictate after the sounds; 0 when left out. */
  readonly dictated?: number;
}

/** How many moments lie between a correction and the word's return (common practice, no source). */
export const RETURNS_AFTER = 4;

/** The warm-up from its beginning, or from a moment on. */
export function standingAt(count: number, at = 0): Standing {
  const order = Array.from({ length: count }, (_, moment) => moment);
  return arriveAt({ order, skipped: [] }, at);
}

/** The same warm-up at its end. */
export function standingAtEnd({ order, skipped }: Pick<Standing, 'order' | 'skipped'>): Standing {
  return arriveAt({ order, skipped }, order.length);
}

/** The moment that is up; undefined at the end. */
export function momentAt(
  { order, at }: Pick<Standing, 'order' | 'at'>,
  moments: readonly Moment[],
): Moment | undefined {
  const number = order[at];
  return number === undefined ? undefined : moments[number];
}

/** The warm-up after an act. Whatever is done, a blank sheet is lifted first. */
export function act(standing: Standing, what: Act, manner: Manner): Standing {
  const moment = momentAt(standing, manner.moments);
  if (what === 'pause') return { ...standing, paused: !standing.paused && moment !== undefined };
  if (standing.paused) return { ...standing, paused: false };
  if (standing.dictating !== null) return dictate(standing, what, manner);
  if (what === 'back') {
    return standing.turn === null ? back(standing, manner) : letGo(standing, moment);
  }
  if (!moment) return standing;
  if (typeof what === 'object') return turnCard(standing, what.turn, manner);
  if (what === 'let-go') return letGo(standing, moment);
  if (what === 'correct') return correct(standing, moment);
  if (what === 'dictate') {
    const may = moment.part === 'auditory' && (manner.dictated ?? 0) > 0;
    return may ? { ...letGo(standing, moment), spellings: false, dictating: 0 } : standing;
  }
  if (what === 'sweep')
    return moment.part === 'blending' ? sweep(standing, moment, manner) : standing;
  if (what === 'answer') {
    if (moment.part === 'auditory') return act(standing, 'spellings', manner);
    return moment.part === 'blending' || isSightId(moment.id)
      ? { ...standing, answer: !standing.answer }
      : standing;
  }
  if (what === 'spellings') {
    return moment.part === 'auditory' ? { ...standing, spellings: !standing.spellings } : standing;
  }
  if (what === 'skip') return skip(standing);
  if (standing.turn !== null) return correct(standing, moment);
  if (hiddenOf(standing, manner) > 0) {
    const swept = manner.blending === 'joined' ? 1 : 0;
    return { ...standing, shown: standing.shown + 1, sweeps: standing.sweeps + swept };
  }
  return arriveAt(standing, standing.at + 1);
}

/** How many cards of the row are still to be opened. */
export function hiddenOf(standing: Standing, { moments, blending }: Manner): number {
  const moment = momentAt(standing, moments);
  if (moment?.part !== 'blending') return 0;
  if (blending === 'whole' && standing.turn === null) return 0;
  return Math.max(stepsOf(moment) - standing.shown, 0);
}

/** Sweeps the row: all of it, opened if need be; of joined sounds, those that lie open. */
function sweep(standing: Standing, moment: Moment, { blending }: Manner): Standing {
  const opens = blending !== 'joined' || standing.turn !== null;
  const shown = opens ? stepsOf(moment) : standing.shown;
  return { ...standing, shown, sweeps: standing.sweeps + 1, joined: true };
}

function skip(standing: Standing): Standing {
  return arriveAt({ ...standing, skipped: [...standing.skipped, standing.at] }, standing.at + 1);
}

/**
 * Turns one card: the flip of the run that differs only there comes next. While
 * cards are still face down the next one is opened. Nothing is changed where no
 * flip that is still to come differs only there.
 */
function turnCard(standing: Standing, pile: number, manner: Manner): Standing {
  if (standing.turn !== null || hiddenOf(standing, manner) > 0)
    return act(standing, 'next', manner);
  const order = turnedTo(standing, pile, manner.moments);
  return order ? arriveAt({ ...standing, order }, standing.at + 1) : standing;
}

/** Dictation: word after word; then on with what comes after the sounds. */
function dictate(standing: Standing, what: Act, { dictated = 0 }: Manner): Standing {
  const word = standing.dictating ?? 0;
  if (what === 'let-go' || (what === 'back' && word === 0)) return { ...standing, dictating: null };
  if (what === 'back') return { ...standing, dictating: word - 1 };
  if (what !== 'next' && what !== 'dictate') return standing;
  if (word + 1 < dictated) return { ...standing, dictating: word + 1 };
  return arriveAt(standing, standing.at + 1);
}

/**
 * One step of a correction: sound by sound, then the sweep, and so in each of
 * the three turns; then the row lies open, and the word comes again a few
 * moments later.
 */
function correct(standing: Standing, moment: Moment): Standing {
  const { turn, shown, joined, sweeps, order, at } = standing;
  if (turn === null) return { ...standing, ...opened(moment), turn: 'my' };
  if (moment.part === 'blending') {
    if (shown < stepsOf(moment)) return { ...standing, shown: shown + 1 };
    if (!joined) return { ...standing, sweeps: sweeps + 1, joined: true };
  }
  const next = TURNS[TURNS.indexOf(turn) + 1];
  if (next) return { ...standing, ...opened(moment), turn: next };
  const again = Math.min(at + RETURNS_AFTER, order.length);
  return {
    ...letGo(standing, moment),
    order: order.toSpliced(again, 0, order[at] as number),
    skipped: standing.skipped.map((place) => (place < again ? place : place + 1)),
  };
}

/** The row at the beginning of a turn. */
function opened(moment: Moment) {
  const spellings = moment.part === 'auditory';
  return { shown: 1, sweeps: 0, joined: false, answer: false, spellings };
}

/** Leaves a correction; the row lies open. */
function letGo(standing: Standing, moment: Moment | undefined): Standing {
  if (standing.turn === null) return standing;
  return { ...standing, turn: null, joined: false, shown: moment ? stepsOf(moment) : 1 };
}

function back(standing: Standing, { moments }: Manner): Standing {
  const before = Math.max(standing.at - 1, 0);
  const skipped = standing.skipped.filter((place) => place !== before);
  const arrived = arriveAt({ ...standing, skipped }, before);
  const moment = momentAt(arrived, moments);
  return { ...arrived, shown: moment ? stepsOf(moment) : 1 };
}

function arriveAt({ order, skipped }: Pick<Standing, 'order' | 'skipped'>, at: number): Standing {
  return {
    order,
    at: Math.min(at, order.length),
    shown: 1,
    sweeps: 0,
    answer: false,
    spellings: false,
    paused: false,
    turn: null,
    joined: false,
    dictating: null,
    skipped,
  };
}
