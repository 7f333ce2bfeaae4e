import type { Accent } from '../language/accent/accent.ts';
import { isSaidHere } from '../language/accent/is-said-here.ts';
import type { AttemptReading, CardVerdict } from './attempt.ts';

/**
 * The reading in a class with this accent: of cards written with letters of another sound that the class
 * says there (*pin* for *pen*), the sound was heard. Their spelling stays unknown. All else is left as it is.
 */
export function asSaidHere(reading: AttemptReading, accent: Accent): AttemptReading {
  if (accent.length === 0 || reading.wordRight) return reading;
  const sounds = reading.reading.cards.map(({ phonemes }) => phonemes);
  const cards = reading.cards.map((card, at): CardVerdict => {
    const { verdict, said } = card;
    if (verdict !== 'other-sound' || !said || !isSaidHere(sounds, at, said, accent)) return card;
    return {
      ...card,
      verdict: 'same-sound',
      heard: true,
      said: null,
      mayStand: false,
      fact: 'accent',
    };
  });
  if (cards.every((card, at) => card === reading.cards[at])) return reading;
  const answer = reading.answer === 'another-word' ? 'attempt' : reading.answer;
  return { ...reading, answer, cards };
}
