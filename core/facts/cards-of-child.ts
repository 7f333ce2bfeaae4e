import type { CardId } from '../language/card-id.ts';
import type { ReadingsByCard } from './card-reading.ts';

/** A card that a child was taught or asked. */
export interface ChildCard {
  readonly card: CardId;
  /** Asked, with the class or in a check, though its own group has not been taught it. */
  readonly beyond: boolean;
}

/**
 * Every card that concerns a child: those its group was taught, in that order,
 * then what it was asked beyond them, as it first came up.
 */
export function cardsOfChild(
  taught: readonly CardId[],
  readings: ReadingsByCard,
): readonly ChildCard[] {
  const known = new Set(taught);
  const beyond = [...readings.keys()].filter((card) => !known.has(card));
  return [
    ...taught.map((card) => ({ card, beyond: false })),
    ...beyond.map((card) => ({ card, beyond: true })),
  ];
}
