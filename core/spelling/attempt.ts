import type { CardId } from '../language/card-id.ts';
import type { Phoneme } from '../language/phonemes.ts';
import type { Reading } from '../language/reading.ts';
import type { Taught } from '../language/taught.ts';
import type { Difference } from './phonetics.ts';

/**
 * What became of one card: written as the word has it; with another spelling of the same sound; with
 * letters of another sound; not at all; with its letters in the wrong order or place; with a letter
 * turned (b d p q).
 */
export const VERDICTS = [
  'same',
  'same-sound',
  'other-sound',
  'left-out',
  'order',
  'turned',
] as const;
export type Verdict = (typeof VERDICTS)[number];

/**
 * A habit of spelling that was missed while the sound was heard: letters doubled or not, the silent e,
 * the ending ed or es, which of c, k and ck, ff ll ss zz at the end of a short word, tch and dge.
 */
export const SPELLING_HABITS = [
  'doubling',
  'silent-e',
  'ed',
  'es',
  'c-k-ck',
  'ff-ll-ss-zz',
  'tch-dge',
] as const;
export type SpellingHabit = (typeof SPELLING_HABITS)[number];

/**
 * Why a card was written as it was, as far as phonetics knows: `letter-name`, *r* for *are*;
 * `syllabic`, *brd*; `affricated`, *chran*; `flapped`, *budder*; `after-s`, *sdop*; `weak-vowel`,
 * *rabet*; `nasal-lost`, *jup*; `liquid-lost`, *hep*; `cluster-part`, *sop* for *stop*; or the feature
 * in which the sound written differs from the sound said. `meant`: the teacher says that it was heard.
 * `accent`: the class says it so.
 */
export type Fact =
  | 'letter-name'
  | 'syllabic'
  | 'affricated'
  | 'flapped'
  | 'after-s'
  | 'weak-vowel'
  | 'nasal-lost'
  | 'liquid-lost'
  | 'cluster-part'
  | 'meant'
  | 'accent'
  | Difference;

/** One card of the word said, and what was written for it. */
export interface CardVerdict {
  readonly id: CardId;
  /** The letters written for it; those of a split grapheme with a low line; empty when left out. */
  readonly letters: string;
  readonly verdict: Verdict;
  /** Whether the sound was heard, however it was spelled. A silent card has none to miss. */
  readonly heard: boolean;
  /** The correspondence that was written instead, if the table has it: `k=K`. */
  readonly instead: string | null;
  /** The sounds of the letters written, where they are others than the card's. */
  readonly said: readonly Phoneme[] | null;
  /** Of another spelling of the sound: whether it may stand there. */
  readonly mayStand: boolean | null;
  /** Whether the word's card was taught; null when it is not known what was. */
  readonly taught: boolean | null;
  /** The same of what was written instead. */
  readonly insteadTaught: boolean | null;
  readonly habit: SpellingHabit | null;
  readonly fact: Fact | null;
}

/** Letters that belong to no card of the word; `before` is the place of the card that follows, from 0. */
export interface AddedLetters {
  readonly letters: string;
  readonly before: number;
}

/** What was handed in: an attempt at the word, nothing, something illegible, another word altogether. */
export type Answer = 'attempt' | 'blank' | 'illegible' | 'another-word';

/** An attempt read sound by sound: `cards` follow the cards of `reading`. */
export interface AttemptReading {
  readonly word: string;
  /** As it was written, untouched. */
  readonly wrote: string;
  readonly answer: Answer;
  readonly reading: Reading;
  readonly cards: readonly CardVerdict[];
  readonly added: readonly AddedLetters[];
  readonly sequences: LetterSequences;
  readonly wordRight: boolean;
}

/** Correct letter sequences: `right` of `of` pairs of neighboring letters. */
export interface LetterSequences {
  readonly right: number;
  readonly of: number;
}

/** What is known when an attempt is read. */
export interface ReadWith {
  /** What was taught; null when it is not known. */
  readonly taught: Taught | null;
  /** Whether letters (lower case) spell a word that children know. */
  readonly isFamiliar: (letters: string) => boolean;
}
