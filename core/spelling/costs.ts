/**
 * What each way of writing a card costs: the likelier reading of an attempt is the one that costs less.
 * Set by hand from one order of belief, not fitted to any list: as the word has it; another spelling of
 * the sound that may stand there; one that may not; the letter's name or a fact of speech; letters turned
 * or in another order; another sound, the nearer in the mouth the cheaper; a sound left out or letters
 * added. Another sound always costs less than leaving the card out and adding letters, and two slips more
 * than one.
 */
export const COSTS = {
  sameSound: 0.2,
  habitMissed: 0.3,
  speechFact: 0.4,
  outOfPlace: 0.4,
  letterName: 0.6,
  /** Letters exchanged within one card (*gril*), between two, and between two of which one has more letters. */
  orderWithin: 0.8,
  order: 1.1,
  orderAcross: 1.3,
  turned: 0.8,
  otherSound: 1,
  /** Times how far the sounds are apart, from 0 to 1. */
  apart: 1.5,
  leftOut: 1.2,
  leftOutSilent: 1.15,
  added: 1.6,
  /** A letter written twice, and an e after the last consonant: more a slip of the pen than of the ear. */
  addedAgain: 0.6,
  addedFinalE: 0.8,
  /** The whole word from right to left (*saw* for *was*). */
  backwards: 1.2,
} as const;
