import { logistic } from '../../../core/learners/belief/grid.ts';
import type { Truth } from '../pupil.ts';

/**
 * A child grows in spurts: on a few days of its own all its cards are read better from then on, whatever
 * was practiced; between them nothing moves, but Mondays are worse. Which cards gain most differs.
 */
export const spurts: Truth = ({ name, difficulties, draw }) => {
  const start = draw.normal(0.6, 1);
  const monday = draw.between(0, 1);
  const days = [draw.between(5, 25), draw.between(20, 45)];
  const cards = new Map(
    [...difficulties].map(([card, hard]) => [
      card,
      {
        from: start - hard + draw.normal(0, 0.7),
        gains: days.map(() => draw.between(0.2, 2.2)),
      },
    ]),
  );
  return {
    name,
    chance(card, day) {
      const { from, gains } = cards.get(card) ?? { from: 0, gains: [] };
      const grown = gains.reduce((sum, gain, at) => sum + (day >= (days[at] ?? 0) ? gain : 0), 0);
      // The classroom's first day, 0, is a Monday.
      return logistic(from + grown - (day % 7 === 0 ? monday : 0));
    },
    practice() {},
  };
};
