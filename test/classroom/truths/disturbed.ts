import { logistic } from '../../../core/learners/belief/grid.ts';
import type { Truth } from '../pupil.ts';

/**
 * What is practiced disturbs what came just before it in the order (retroactive interference: McGeoch
 * 1942): each practice strengthens its own card and weakens the two before it a little, which their own
 * practice mends. Strength closes in on a height of the pupil's own and is not lost by days.
 */
export const disturbed: Truth = ({ name, difficulties, draw }) => {
  const ids = [...difficulties.keys()];
  const height = draw.between(1.8, 3.6);
  const pace = 0.12 * Math.exp(draw.normal(0, 0.4));
  const disturbance = draw.between(0.02, 0.12);
  const cards = new Map(
    [...difficulties].map(([card, hard]) => [
      card,
      draw.happens(0.3) ? draw.between(0, 2) : draw.between(-3, -1) - hard,
    ]),
  );
  const of = (card: string) => cards.get(card) ?? 0;
  return {
    name,
    chance: (card) => logistic(of(card)),
    practice(card, _, amount) {
      cards.set(card, of(card) + pace * amount * (height - of(card)));
      const at = ids.indexOf(card);
      for (const before of ids.slice(Math.max(0, at - 2), at)) {
        cards.set(before, Math.max(-3, of(before) - disturbance * amount));
      }
    },
  };
};
