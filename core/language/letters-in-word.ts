import { type CardId, graphemeOf } from './card-id.ts';

/** Some letters of a word, and which of its cards they belong to, from 0. */
export interface WordLetters {
  readonly letters: string;
  readonly at: number;
}

/**
 * The letters of a word's cards in the order in which they are read: the e of a
 * split card comes after the card that it encloses, as in *m·a·k·e*.
 */
export function lettersInWord(cards: readonly CardId[]): readonly WordLetters[] {
  const all: WordLetters[] = [];
  let waiting: WordLetters | null = null;
  for (const [at, card] of cards.entries()) {
    const [head = '', tail = ''] = graphemeOf(card).split('_');
    all.push({ letters: head, at });
    if (waiting !== null) all.push(waiting);
    waiting = tail === '' ? null : { letters: tail, at };
  }
  return waiting === null ? all : [...all, waiting];
}
