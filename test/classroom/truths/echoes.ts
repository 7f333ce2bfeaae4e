import type { Truth } from '../pupil.ts';

/**
 * A child echoes what it has just heard: on a day on which a card was heard often, much of it is read
 * correctly for that alone, and the next morning as little as before. What stays is learned slowly.
 */
export const echoes: Truth = ({ name, difficulties, draw }) => {
  const echo = draw.between(0.2, 0.7);
  const pace = 0.04 * Math.exp(draw.normal(0, 0.5));
  const slip = draw.between(0.01, 0.08);
  const cards = new Map(
    [...difficulties].map(([card, hard]) => [
      card,
      {
        known: draw.happens(0.35) ? draw.between(0.5, 1) : draw.between(0.05, 0.4),
        pace: pace * Math.exp(-hard),
        day: Number.NaN,
        heard: 0,
      },
    ]),
  );
  const at = (card: string) => {
    const one = cards.get(card);
    if (!one) throw new Error(`No pupil was drawn for the card ${card}.`);
    return one;
  };
  return {
    name,
    chance(card, day) {
      const { known, day: last, heard } = at(card);
      const echoed = last === day ? echo * (1 - Math.exp(-heard)) : 0;
      return (1 - slip) * (known + (1 - known) * echoed);
    },
    practice(card, day, amount) {
      const one = at(card);
      one.known += one.pace * amount * (1 - one.known);
      one.heard = one.day === day ? one.heard + amount : amount;
      one.day = day;
    },
  };
};
