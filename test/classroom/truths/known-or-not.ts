import type { Truth } from '../pupil.ts';

/** A pupil knows a card or does not. */
export interface AllOrNone {
  /** The chance that a practice makes it known, and that a day makes it unknown. */
  readonly learn: number;
  readonly lose: number;
  /** Known on the first day. */
  readonly first?: number;
}

/** All or none (Bower 1961; Corbett & Anderson 1995): slips where it is known, guesses where it is not. */
export function allOrNone({ learn, lose, first = 0.3 }: AllOrNone): Truth {
  return ({ name, difficulties, draw }) => {
    const slip = draw.between(0.01, 0.08);
    const quick = Math.exp(draw.normal(0, 0.5));
    const cards = new Map(
      [...difficulties].map(([card, hard]) => [
        card,
        {
          known: draw.happens(first * Math.exp(-hard)),
          since: 0,
          guess: draw.between(0.05, 0.4),
          learn: learn * quick * Math.exp(-hard),
        },
      ]),
    );
    const at = (card: string) => {
      const one = cards.get(card);
      if (!one) throw new Error(`No pupil was drawn for the card ${card}.`);
      return one;
    };
    const chance = (card: string, day: number) => {
      const one = at(card);
      const kept = one.known ? (1 - lose) ** Math.max(0, day - one.since) : 0;
      return { one, kept, p: kept * (1 - slip) + (1 - kept) * one.guess };
    };
    return {
      name,
      chance: (card, day) => chance(card, day).p,
      practice(card, day, amount) {
        const { one, kept } = chance(card, day);
        one.known = draw.happens(kept) || draw.happens(Math.min(0.9, one.learn * amount));
        one.since = day;
      },
    };
  };
}
