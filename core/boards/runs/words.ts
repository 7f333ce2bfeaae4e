/** The words that a board may show and what is wished of each, numbered in the order of its table. */
import type { Phoneme } from '../../language/phonemes.ts';
import { cardsOnCard, soundsOnCard } from '../../language/syllable-card.ts';
import type { Lexicon } from '../../words/lexicon.ts';
import { easeAmong, isAwkward, type SaidRow } from '../judge/nonsense.ts';
import { mayShow, outcomeAt, type WordTable } from '../judge/word-table.ts';
import { hardnessRanks } from './hardness.ts';
import type { RunWishes } from './wishes.ts';

/** How gladly a word is shown: any day, only for want of others, or again after a few days. */
export const GLADLY = 0;
export const IF_NEEDED = 1;
export const AGAIN = 2;

/** Spellings of one sort and of the other. */
export interface SortCounts {
  readonly ofOneSort: number;
  readonly ofTheOther: number;
}

/** The words of a board. Arrays are by the word's number unless they say otherwise. */
export interface RunWords {
  /** The index in the word table. */
  readonly index: Int32Array;
  /** Equal numbers are equal spellings, 0 to `spellings - 1`. */
  readonly spelling: Int32Array;
  readonly spellings: number;
  readonly isReal: Uint8Array;
  /** How many spellings are real, and how many nonsense. */
  readonly kinds: SortCounts;
  readonly isFocused: Uint8Array;
  /** How many spellings show a focus card, and how many do not. */
  readonly focuses: SortCounts;
  /** 1 where a card is shown that is to come in at least a share of the flips. */
  readonly isDue: Uint8Array;
  /** How many spellings show such a card. */
  readonly dueSpellings: number;
  /** GLADLY, IF_NEEDED or AGAIN. */
  readonly reserve: Uint8Array;
  /** How easy among the words of the board, 0 to 1, for nonsense; 0 for real words. */
  readonly ease: Float64Array;
  /** How hard, 0 to 1 by rank; null when no rise is wished. */
  readonly hard: Float64Array | null;
  readonly piles: number;
  /** The number of the card in each pile, unique over the board, by word · piles + pile. */
  readonly cardAt: Int32Array;
  /** How many cards lie on the board, those without words among them. */
  readonly cards: number;
}

/** Picks the words of a judged board. */
export function makeRunWords(table: WordTable, wishes: RunWishes, lexicon: Lexicon): RunWords {
  const index: number[] = [];
  for (let at = 0; at < table.outcomes.length; at++) if (mayShow(table, at)) index.push(at);
  const cards = table.piles.flat();
  const cardAt = numberCards(table, index);
  const piles = table.piles.length;
  const isReal = Uint8Array.from(index, (at) => Number(outcomeAt(table, at) !== 'nonsense'));
  const showing = (some: readonly string[] = []): Uint8Array => {
    const wanted = cards.map(
      (id) => some.includes(id) || cardsOnCard(id).some((own) => some.includes(own)),
    );
    const shows = new Uint8Array(index.length);
    cardAt.forEach((card, at) => {
      if (wanted[card]) shows[Math.floor(at / piles)] = 1;
    });
    return shows;
  };
  const isFocused = showing(wishes.focus);
  const isDue = showing(wishes.atLeast?.cards);
  const sounds = cards.map(soundsOnCard);
  const said: { readonly sounds: Phoneme[] }[] = index.map(() => ({ sounds: [] }));
  cardAt.forEach((card, at) => {
    const word = said[Math.floor(at / piles)];
    for (const sound of sounds[card] as readonly Phoneme[]) word?.sounds.push(sound);
  });
  const ease = easeAmong(said, lexicon);
  const { spelling, spellings } = numberSpellings(table, index);
  return {
    index: Int32Array.from(index),
    spelling,
    spellings,
    isReal,
    kinds: countSorts(isReal, spelling),
    isFocused,
    focuses: countSorts(isFocused, spelling),
    isDue,
    dueSpellings: countSorts(isDue, spelling).ofOneSort,
    reserve: Uint8Array.from(index, (at, word) => {
      if (wishes.avoid?.has(table.words[at] as string)) return AGAIN;
      if (isReal[word]) return outcomeAt(table, at) === 'rare' ? IF_NEEDED : GLADLY;
      return isAwkward(said[word] as SaidRow, lexicon) ? IF_NEEDED : GLADLY;
    }),
    ease: Float64Array.from(ease, (of, word) => (isReal[word] ? 0 : of)),
    hard: wishes.rise ? hardnessRanks(said, isReal, ease) : null,
    piles,
    cardAt,
    cards: cards.length,
  };
}

function numberCards({ piles }: WordTable, index: readonly number[]): Int32Array {
  const cardAt = new Int32Array(index.length * piles.length);
  const cards = piles.flat().length;
  index.forEach((at, word) => {
    let rest = at;
    let last = cards;
    for (let pile = piles.length - 1; pile >= 0; pile--) {
      const size = (piles[pile] as readonly string[]).length;
      last -= size;
      cardAt[word * piles.length + pile] = last + (rest % size);
      rest = Math.floor(rest / size);
    }
  });
  return cardAt;
}

function numberSpellings(table: WordTable, index: readonly number[]) {
  const numbers = new Map<string, number>();
  const spelling = Int32Array.from(index, (at) => {
    const word = table.words[at] as string;
    const number = numbers.get(word) ?? numbers.size;
    numbers.set(word, number);
    return number;
  });
  return { spelling, spellings: numbers.size };
}

function countSorts(isSort: Uint8Array, spelling: Int32Array): SortCounts {
  const counted = [new Set<number>(), new Set<number>()] as const;
  isSort.forEach((sort, word) => {
    counted[sort ? 1 : 0].add(spelling[word] as number);
  });
  return { ofOneSort: counted[1].size, ofTheOther: counted[0].size };
}
