import { PLACES, type Place } from '../language/correspondence.ts';
import { HABITS, type Habit } from '../language/taught.ts';
import type { WordParts } from './word-parts.ts';

/**
 * A card where it stands in a word: its number, and the set of its contexts there, in
 * one integer. A class reads thousands of words over and over, and what is small
 * stays near the processor.
 */
export type Spot = number;

/** What a card may ask for besides itself: its place in the word, and habits. Their order is their number. */
const CONTEXTS: readonly (Place | Habit)[] = [...PLACES, ...HABITS];

/** The number of a place or habit, from 0. */
export function contextNumber(of: Place | Habit): number {
  return CONTEXTS.indexOf(of);
}

/** The number of a spot's card. */
export function cardOf(spot: Spot): number {
  return spot >> CONTEXTS.length;
}

/** The context numbers of a spot, as a set of bits. */
export function contextsOf(spot: Spot): number {
  return spot & ((1 << CONTEXTS.length) - 1);
}

/** The lowest number in a set of bits that is not empty. */
export function lowestOf(set: number): number {
  return 31 - Math.clz32(set & -set);
}

/** Longer words are read too, but only so many cards count. */
export const MOST_CARDS = 32;

/**
 * Takes words apart, each once, however often it is read. The function that comes
 * back writes the spots of a word, at most MOST_CARDS, and tells how many there are.
 * A list that was met before is known as itself, without a look at its cards.
 */
export function openWords(
  partsOf: (cards: readonly string[]) => WordParts,
  numberOf: (card: string) => number,
): (cards: readonly string[], into: Int32Array) => number {
  const spots: Spot[] = [];
  const firstByList = new WeakMap<readonly string[], number>();
  const firstByWord = new Map<string, number>();

  return (cards, into) => {
    const first = firstByList.get(cards) ?? find(cards);
    const count = Math.min(cards.length, MOST_CARDS);
    for (let at = 0; at < count; at++) into[at] = spots[first + at] as Spot;
    return count;
  };

  /** Where the spots of a word begin. */
  function find(cards: readonly string[]): number {
    const word = cards.join(' ');
    let first = firstByWord.get(word);
    if (first === undefined) {
      first = spots.length;
      firstByWord.set(word, first);
      takeApart(cards);
    }
    // A card alone is found as fast by its id.
    if (cards.length > 1) firstByList.set(cards, first);
    return first;
  }

  function takeApart(cards: readonly string[]): void {
    const { places, habits } = partsOf(cards);
    for (let at = 0; at < cards.length; at++) {
      const place = places[at] ?? null;
      let contexts = place === null ? 0 : 1 << contextNumber(place);
      for (const habit of habits[at] ?? []) contexts |= 1 << contextNumber(habit);
      spots.push((numberOf(cards[at] as string) << CONTEXTS.length) | contexts);
    }
  }
}
