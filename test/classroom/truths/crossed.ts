import { logistic } from '../../../core/learners/belief/grid.ts';
import type { Chances } from '../chances.ts';
import type { Truth } from '../pupil.ts';

/** How pupils of a still world differ, and what moves them, on the log-odds scale. */
export interface Crossed {
  /** How far a pupil's cards differ beside what the pupil and the card explain. */
  readonly pair: number;
  /** The share of pairs that lie three lower, for no reason. */
  readonly odd?: number;
  /** What one practice adds to a pair. */
  readonly gain?: number;
  /** How much a pupil's days differ: a standard deviation; and what is lost on a tired one in five. */
  readonly days?: number;
  readonly tired?: number;
  /** How far a pupil's vowels stand apart from its consonants. */
  readonly vowels?: number;
}

/**
 * Item response theory (Rasch 1960): the log-odds are the pupil less the card, and here a pair's own.
 * Without more a still world: nothing is learned and nothing lost.
 */
export function crossed(some: Crossed): Truth {
  return ({ name, difficulties, draw }) => {
    const ability = draw.normal(1.6, 0.9);
    const apart = draw.normal(0, some.vowels ?? 0);
    const pairs = new Map(
      [...difficulties].map(([card, hard]) => [card, ability - 1.4 * hard + ownOf(some, draw)]),
    );
    const moods = new Map<number, number>();
    const strength = (card: string, place: string | null, clustered: boolean) => {
      const vowel = /^[aeiou]/.test(card) ? apart : 0;
      const there = place === 'ending' ? 0.3 : 0;
      return (pairs.get(card) ?? 0) + vowel - there - (clustered ? 0.6 : 0);
    };
    const moodOn = (day: number) => {
      let mood = moods.get(day);
      if (mood === undefined) {
        const tired = some.tired !== undefined && draw.happens(0.2) ? some.tired : 0;
        mood = draw.normal(0, some.days ?? 0) - tired;
        moods.set(day, mood);
      }
      return mood;
    };
    return {
      name,
      chance: (card, day, place, clustered) =>
        logistic(strength(card, place, clustered) + moodOn(day)),
      usually: (card, _, place, clustered) => logistic(strength(card, place, clustered)),
      practice(card, _, amount) {
        pairs.set(card, (pairs.get(card) ?? 0) + amount * (some.gain ?? 0));
      },
    };
  };
}

function ownOf({ pair, odd = 0 }: Crossed, draw: Chances): number {
  return draw.normal(0, pair) - (draw.happens(odd) ? 3 : 0);
}
