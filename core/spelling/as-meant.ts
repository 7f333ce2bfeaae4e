import type { AttemptReading, CardVerdict } from './attempt.ts';

/**
 * The reading as a teacher says it was meant: of the `cards` (counted from 1) that were written with
 * letters of another sound she says that their sound was heard, because she knows this child's hand or
 * heard the child say it. Their spelling stays unknown. Other cards, and all else, are left as they are.
 */
export function asMeant(reading: AttemptReading, cards: readonly number[]): AttemptReading {
  const meant = reading.cards.map((card, at) =>
    cards.includes(at + 1) && canBeMeant(card) ? heard(card) : card,
  );
  if (meant.every((card, at) => card === reading.cards[at])) return reading;
  const answer = reading.answer === 'another-word' ? 'attempt' : reading.answer;
  return { ...reading, answer, cards: meant };
}

/** Whether it is a matter of judgment that the sound of a card was heard: letters stand for it. */
export function canBeMeant({ verdict, heard }: CardVerdict): boolean {
  return verdict === 'other-sound' && !heard;
}

function heard(card: CardVerdict): CardVerdict {
  return {
    ...card,
    verdict: 'same-sound',
    heard: true,
    said: null,
    mayStand: false,
    fact: 'meant',
  };
}
