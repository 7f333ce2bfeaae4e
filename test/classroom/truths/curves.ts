import type { Truth } from '../pupil.ts';

/** How a pupil's chances move with practice and days. */
export interface Curve {
  /** How fast practice closes the gap to the ceiling. */
  readonly rate: number;
  /** Days in which half is lost after the first practice; each practice makes it half as long again. */
  readonly halfLife?: number;
}

/**
 * Learning curves (Estes 1950): each practice closes a share of the gap to a ceiling of the pupil's own;
 * and, with a half-life, what was gained fades between practices, later the more there were (after
 * Settles & Meeder 2016). Chances are moved, no log-odds.
 */
export function curves({ rate, halfLife }: Curve): Truth {
  return ({ name, difficulties, draw }) => {
    const ceiling = draw.between(0.85, 0.99);
    const pace = rate * Math.exp(draw.normal(0, 0.5));
    const cards = new Map(
      [...difficulties].map(([card, hard]) => [
        card,
        {
          least: draw.between(0.05, 0.35),
          gained: draw.happens(0.3) ? draw.between(0.3, 0.9) : draw.between(0, 0.3),
          pace: pace * Math.exp(-hard),
          life: halfLife ?? Number.POSITIVE_INFINITY,
          day: 0,
        },
      ]),
    );
    const at = (card: string) => {
      const one = cards.get(card);
      if (!one) throw new Error(`No pupil was drawn for the card ${card}.`);
      return one;
    };
    const kept = (card: string, day: number) => {
      const one = at(card);
      return one.gained * 0.5 ** (Math.max(0, day - one.day) / one.life);
    };
    return {
      name,
      chance(card, day) {
        const { least } = at(card);
        return least + (ceiling - least) * kept(card, day);
      },
      practice(card, day, amount) {
        const one = at(card);
        const before = kept(card, day);
        one.gained = before + (1 - before) * (1 - Math.exp(-one.pace * amount));
        if (day > one.day) one.life = Math.min(400, one.life * 1.5);
        one.day = day;
      },
    };
  };
}

/** Sudden insight: each card stays as weak as it was until a day of its own, and is read surely from then on. */
export const sudden: Truth = ({ name, difficulties, draw }) => {
  const slip = draw.between(0.01, 0.06);
  const cards = new Map(
    [...difficulties].map(([card, hard]) => [
      card,
      {
        before: draw.between(0.1, 0.5),
        day: draw.happens(0.35) ? -1 : draw.between(3, 70) + 15 * hard,
      },
    ]),
  );
  return {
    name,
    chance(card, day) {
      const { before, day: seen } = cards.get(card) ?? { before: 0.3, day: 0 };
      return day >= seen ? 1 - slip : before;
    },
    practice() {},
  };
};

/** Cards that are taken for each other, as b for d: mixed up until one of them has had its practice. */
export const confusions: Truth = ({ name, difficulties, draw }) => {
  const ids = [...difficulties.keys()];
  const slip = draw.between(0.01, 0.06);
  const patience = draw.between(6, 40);
  const mixed = new Map(ids.map((id) => [id, draw.happens(0.25) ? draw.between(0.3, 0.7) : 0]));
  const practiced = new Map<string, number>();
  return {
    name,
    chance(card) {
      const twin = ids[ids.indexOf(card) ^ 1] ?? card;
      const had = (practiced.get(card) ?? 0) + (practiced.get(twin) ?? 0) / 2;
      return (1 - slip) * (1 - (mixed.get(card) ?? 0) * Math.exp(-had / patience));
    },
    practice(card, _, amount) {
      practiced.set(card, (practiced.get(card) ?? 0) + amount);
    },
  };
};
