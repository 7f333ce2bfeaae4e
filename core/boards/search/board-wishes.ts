import type { CardId } from '../../language/card-id.ts';

/** What a board should be. Ids named here that fit no pile of the shape are left aside. */
export interface BoardWishes {
  /** The most cards in each pile, left to right. */
  readonly limits: readonly number[];
  /** Cards that must lie in at least one of the piles they fit. */
  readonly pinned?: readonly CardId[];
  /** Cards that must lie in every pile they fit. */
  readonly pinnedEverywhere?: readonly CardId[];
  /** Cards that must lie in one pile, each by the pile's place. */
  readonly pinnedAt?: readonly (readonly [pile: number, id: CardId])[];
  /** Cards that must not. */
  readonly banned?: readonly string[];
  /** Cards to lie on it where they can, the most wanted first: see `wantedThatFit`. */
  readonly wanted?: readonly CardId[];
  /** Cards whose words count threefold. */
  readonly focus?: readonly CardId[];
  /** How often the words of a card count; a word counts by the most wanted of its cards. */
  readonly worth?: readonly (readonly [CardId, number])[];
  /**
   * Look-alikes to be turned one into the other: both lie in one pile where they can (`contrastsThatFit`),
   * and a word whose twin is a word too counts threefold.
   */
  readonly contrasts?: readonly (readonly [CardId, CardId])[];
  /** No combination may be stopped by the word screen: a board for cards on paper. */
  readonly clean?: boolean;
  /** Beyond clean: no combination may break a rule, sound like a word or be said otherwise. */
  readonly strict?: boolean;
  /**
   * What words are worth; by default familiar real words count four times as much
   * as others, and nonsense counts nothing on boards of more than three piles.
   */
  readonly weights?: WordWeights;
  /** Stops the search early; without it the board is proven best. */
  readonly nodeLimit?: number;
}

/** What a word adds to a board's value, by what it is; whole numbers, none negative. */
export interface WordWeights {
  readonly familiar: number;
  readonly rare: number;
  readonly nonsense: number;
}
