/** What a board is best for: which cards must lie on it, and what their words are worth. */
import type { CardId } from '../../language/card-id.ts';

/**
 * What the best board is best for. `today`: what is new, what broke lately and what she wants practiced
 * lie on it and weigh more. `most-words`: words are counted, whatever their cards. `review`: what broke
 * lately and what is due to come back weigh more, what is new does not.
 */
export const AIMS = ['today', 'most-words', 'review'] as const;
export type Aim = (typeof AIMS)[number];

/** What a day is about, card by card; in each list the most wanted first. */
export interface DayCards {
  readonly newest?: readonly CardId[];
  /** What broke in the last warm-ups. */
  readonly broken?: readonly CardId[];
  /** What she wants practiced, or what is due to come back. */
  readonly focus?: readonly CardId[];
}

/** The same as wishes for the search. */
export interface AimWishes {
  /** Cards to lie on the board where they can, the most wanted first. */
  readonly wanted: readonly CardId[];
  /** How often the words of a card count; once where it is not named. */
  readonly worth: readonly (readonly [CardId, number])[];
}

/** How often a word of such a card counts; ours. A word counts by the most wanted of its cards. */
const NEW = 4;
const BROKEN = 3;
const FOCUS = 3;

/** What an aim asks of a board on a day. */
export function aimWishes(aim: Aim, { newest = [], broken = [], focus = [] }: DayCards): AimWishes {
  if (aim === 'most-words') return { wanted: [], worth: [] };
  const lists: readonly (readonly [readonly CardId[], number])[] =
    aim === 'today'
      ? [
          [newest, NEW],
          [focus, FOCUS],
          [broken, BROKEN],
        ]
      : [
          [broken.filter((id) => !newest.includes(id)), NEW],
          [focus.filter((id) => !newest.includes(id)), FOCUS],
        ];
  const worth = new Map<CardId, number>();
  for (const [ids, factor] of lists) {
    for (const id of ids) worth.set(id, Math.max(factor, worth.get(id) ?? 0));
  }
  return { wanted: [...worth.keys()], worth: [...worth] };
}
