import type { Phoneme } from '../phonemes.ts';
import { type Accent, AMERICAN } from './accent.ts';
import { soundsHere } from './sounds-here.ts';

/**
 * Whether a class says one card of a word so: with these sounds in its place (counted from 0) the word is
 * heard as the word itself. `cards` are the sounds of each card. The short i of *pen* where *pin* and *pen*
 * are alike; never in American, and never the card's own sounds.
 */
export function isSaidHere(
  cards: readonly (readonly Phoneme[])[],
  at: number,
  said: readonly Phoneme[],
  accent: Accent,
): boolean {
  const own = cards[at];
  if (accent === AMERICAN || !own || own.join() === said.join()) return false;
  const heard = (row: readonly (readonly Phoneme[])[]) => soundsHere(row.flat(), accent).join(' ');
  return heard(cards) === heard(cards.with(at, said));
}
