import type { RunWishes } from '../boards/runs/wishes.ts';
import { type Aim, type AimWishes, aimWishes } from '../boards/search/aims.ts';
import { shapeById } from '../boards/shapes/shape-list.ts';
import { type CardId, isSightId } from '../language/card-id.ts';
import type { Taught } from '../language/taught.ts';
import type { Lexicon } from '../words/lexicon.ts';
import type { WordScreen } from '../words/screen.ts';

/** What a drill is made for. Everything but `taught` and `seed` has a default. */
export interface DrillSpec {
  readonly taught: Taught;
  readonly seed: number;
  /** How many flips the blending drill has; 30 by default. */
  readonly flips?: number;
  /** The share of real words, 0 to 1; half by default. */
  readonly realShare?: number;
  /** The cards taught last: always in, first of all. */
  readonly newest?: readonly CardId[];
  /** Cards to practice: on the board they count as the newest do, elsewhere they come next. */
  readonly focus?: readonly CardId[];
  /** What the board and its run are best for; `today` by default. */
  readonly aim?: Aim;
  /** What single parts should practice, in place of `newest` and `focus` there. */
  readonly parts?: Partial<PartWishes>;
  /** Cards that are in the visual and in the auditory part whatever else is, as far as they were taught. */
  readonly pinned?: Partial<Pick<PartWishes, 'visual' | 'auditory'>>;
  /** Share of the flips that show a focus card, 0 to 1; without it they come as it happens. */
  readonly focusShare?: number;
  /**
   * Look-alikes to be turned one into the other in the run, such as b and d. Where
   * both were taught they come to lie in one pile.
   */
  readonly contrasts?: readonly (readonly [CardId, CardId])[];
  /** Easier words first. */
  readonly rise?: boolean;
  /** How many cards the visual drill has; 12 by default. */
  readonly visualCount?: number;
  /** How many sounds the auditory drill has; 6 by default. */
  readonly auditoryCount?: number;
  /** How many words known by sight come after the cards, and how many after the sounds; none by default. */
  readonly sightCount?: number;
  readonly sightSaidCount?: number;
  /** A shape's id; chosen from what is taught by default. */
  readonly shape?: string;
  /** Spellings to leave out of the run where the board allows it: those of the last days. */
  readonly avoid?: ReadonlySet<string>;
}

/**
 * Cards that each part should practice, by id, most wanted first. Those that are among the newest
 * open the visual and auditory part; the others follow in an order by chance. Words known by sight
 * among them are practiced behind the cards and sounds, and lie on no board.
 */
export interface PartWishes {
  readonly visual: readonly CardId[];
  readonly auditory: readonly CardId[];
  /** To lie on the board, as far as it has room. */
  readonly blending: readonly CardId[];
}

/** What a drill is made from. */
export interface DrillEngine {
  readonly lexicon: Lexicon;
  readonly screen: WordScreen;
}

export const DRILL_DEFAULTS = {
  flips: 30,
  realShare: 0.5,
  visualCount: 12,
  auditoryCount: 6,
} as const;

/** What a spec wishes of the run; `seed` is the run's own. */
export function runWishesOf(spec: RunSpec, seed: number): RunWishes {
  const { flips, realShare, avoid, focusShare, contrasts, rise } = spec;
  const focus = (spec.parts?.blending ?? spec.focus)?.filter((id) => !isSightId(id));
  const due = focusShare === undefined ? dayCards(spec) : [];
  return {
    seed,
    flips: flips ?? DRILL_DEFAULTS.flips,
    realShare: realShare ?? DRILL_DEFAULTS.realShare,
    ...(avoid ? { avoid } : {}),
    ...(focus ? { focus } : {}),
    ...(focusShare === undefined ? {} : { focusShare }),
    ...(due.length > 0 ? { atLeast: { cards: due, share: DAY_SHARE } } : {}),
    ...(contrasts ? { contrasts } : {}),
    ...(rise ? { rise } : {}),
  };
}

/** Of words laid in syllables at least this share is real: 20 of 30. Nonsense of two beats comes easily, and teaches less. */
const REAL_IN_BEATS = 2 / 3;

/** The wishes for a run on a board of a shape. */
export function runWishesOn(shape: string, wishes: RunWishes): RunWishes {
  if (shapeById.get(shape)?.form !== 'beats') return wishes;
  return { ...wishes, realShare: Math.max(wishes.realShare, REAL_IN_BEATS) };
}

/** The part of a spec that concerns the run alone. */
export type RunSpec = Pick<
  DrillSpec,
  | 'flips'
  | 'realShare'
  | 'avoid'
  | 'focus'
  | 'focusShare'
  | 'contrasts'
  | 'rise'
  | 'parts'
  | 'newest'
  | 'aim'
>;

/** At least so large a share of the flips shows what the day is about, as far as there are words; ours. */
const DAY_SHARE = 0.4;

/** What the run is about: for today what is new, in a review what is practiced, else nothing. */
export function dayCards(spec: RunSpec): readonly CardId[] {
  const { aim = 'today', newest = [], focus = [], parts } = spec;
  if (aim === 'most-words') return [];
  const practiced = parts?.blending ?? focus;
  const cards = aim === 'today' ? newest : practiced.filter((id) => !newest.includes(id));
  return cards.filter((id) => !isSightId(id));
}

/** What the aim asks of the board: which cards are to lie there, and what their words are worth. */
export function boardWishesOf(spec: DrillSpec): AimWishes {
  const { aim = 'today', newest = [], focus = [], parts } = spec;
  const blending = (ids: readonly CardId[]) => ids.filter((id) => !isSightId(id));
  return aimWishes(aim, { newest: blending(newest), focus: blending(parts?.blending ?? focus) });
}

/**
 * The cards that are to lie on the board, those first that matter most: of the
 * contrasts both cards were taught of, then what the aim asks for: for today the newest and what the
 * blending part should practice, or else those in focus.
 */
export function wantedCards(spec: DrillSpec): readonly CardId[] {
  const known = taughtPairs(spec.taught, spec.contrasts ?? []).flat();
  return [...new Set([...known, ...boardWishesOf(spec).wanted])];
}

/** The cards that a part begins with, and those that follow in any order; by id, most wanted first. */
export interface Practice {
  readonly first: readonly CardId[];
  readonly next: readonly CardId[];
}

/** What the visual or auditory part should practice; what is pinned goes before all else. */
export function practiceOf(
  { newest = [], focus = [], parts, pinned }: DrillSpec,
  part: 'visual' | 'auditory',
): Practice {
  const wished = parts?.[part];
  const always = pinned?.[part] ?? [];
  if (wished === undefined) return { first: [...always, ...newest, ...focus], next: [] };
  return { first: [...always, ...wished.filter((id) => newest.includes(id))], next: wished };
}

/** The contrasts both of whose cards were taught. */
export function taughtPairs(
  { correspondences }: Taught,
  contrasts: readonly (readonly [CardId, CardId])[],
): readonly (readonly [CardId, CardId])[] {
  return contrasts.filter((pair) => pair.every((id) => correspondences.has(id)));
}
