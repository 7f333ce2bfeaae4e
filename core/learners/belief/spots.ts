import type { CardId } from '../../language/card-id.ts';
import { PLACES, type Place } from '../../language/correspondence.ts';
import { HABITS, type Habit } from '../../language/taught.ts';

/** Where each card of a word stands and which habits reading it there asks for. */
export interface WordParts {
  /** By card; null for a card alone. */
  readonly places: readonly (Place | null)[];
  /** By card. */
  readonly habits: readonly (readonly Habit[])[];
}

/**
 * A card where it stands in a word: its number, and the set of its contexts there, in
 * one integer. A class reads thousands of words over and over, and what is small
 * stays near the processor.
 */
export type Spot = number;

/** What a card may ask for besides itself: its place in the word, and habits. Their order is their number. */
const NUMBERS: ReadonlyMap<Place | Habit, number> = new Map(
  [...PLACES, ...HABITS].map((context, number) => [context, number]),
);
/** A bit for each, below the number of the card. */
const BITS = NUMBERS.size;
const EVERY = (1 << BITS) - 1;

/** The number of a place or habit, from 0. */
export function contextNumber(of: Place | Habit): number {
  return NUMBERS.get(of) as number;
}

/** The number of a spot's card. */
export function cardOf(spot: Spot): number {
  return spot >> BITS;
}

/** The context numbers of a spot, as a set of bits. */
export function contextsOf(spot: Spot): number {
  return spot & EVERY;
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
 * Words are found in a hash table of card numbers: joining the ids of every reading
 * to a key would take as long as the model does.
 */
export function openWords(
  partsOf: (cards: readonly CardId[]) => WordParts,
  numberOf: (card: CardId) => number,
): (cards: readonly CardId[], into: Int32Array) => number {
  // The word met last of those with the same hash; 0 for none.
  const lastByHash = new Int32Array(1 << HASH_BITS);
  // One word after another: the word before it with its hash, how many cards it has, its spots.
  let words = new Int32Array(1 << HASH_BITS);
  let end = 1;
  const numbers: number[] = [];

  return (cards, into) => {
    const spots = find(cards) + HEAD;
    const count = Math.min(cards.length, MOST_CARDS);
    for (let at = 0; at < count; at++) into[at] = words[spots + at] as Spot;
    return count;
  };

  /** Where a word stands in `words`. */
  function find(cards: readonly CardId[]): number {
    let hash = 0;
    for (let at = 0; at < cards.length; at++) {
      const number = numberOf(cards[at] as CardId);
      numbers[at] = number;
      hash = Math.imul(hash + number + 1, GOLDEN);
    }
    hash >>>= 32 - HASH_BITS;
    let word = lastByHash[hash] as number;
    while (word !== 0 && !isWord(word, cards.length)) word = words[word] as number;
    return word === 0 ? takeApart(cards, hash) : word;
  }

  /** Whether a word has these `numbers`, and no more. */
  function isWord(word: number, count: number): boolean {
    if (words[word + 1] !== count) return false;
    for (let at = 0; at < count; at++) {
      if (cardOf(words[word + HEAD + at] as Spot) !== numbers[at]) return false;
    }
    return true;
  }

  function takeApart(cards: readonly CardId[], hash: number): number {
    const { places, habits } = partsOf(cards);
    const word = end;
    end += HEAD + cards.length;
    if (end > words.length) {
      const larger = new Int32Array(2 * end);
      larger.set(words);
      words = larger;
    }
    words[word] = lastByHash[hash] as number;
    words[word + 1] = cards.length;
    for (let at = 0; at < cards.length; at++) {
      const place = places[at] ?? null;
      let contexts = place === null ? 0 : 1 << contextNumber(place);
      for (const habit of habits[at] ?? []) contexts |= 1 << contextNumber(habit);
      words[word + HEAD + at] = ((numbers[at] as number) << BITS) | contexts;
    }
    lastByHash[hash] = word;
    return word;
  }
}

/** Numbers of a word before its spots. */
const HEAD = 2;

/** As many hashes as a class has words, about. */
const HASH_BITS = 13;

/** 2³² over the golden ratio: multiplicative hashing (Knuth, TAOCP 3, 6.4). */
const GOLDEN = 0x9e3779b1;
