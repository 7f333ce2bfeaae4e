import type { ChildId } from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import type { Estimate } from '../learners/estimate.ts';
import type { Random } from '../random.ts';

/** A child, and what is believed of each card; one that is absent is not needed. */
export interface ChildBeliefs {
  readonly id: ChildId;
  readonly cards: ReadonlyMap<CardId, Pick<Estimate, 'p' | 'low' | 'high'>>;
}

/** How often a child would go wrong with each card, in one drawing of what may be true. */
export type Gaps = Float64Array;

/**
 * Draws what may be true, as often as asked: by drawing, by child in the order
 * given, the gaps in the order of `cards`. A chance is drawn on the log-odds
 * scale, normal, so that one in twenty lies beyond either end of its interval.
 * Half of the variance is the child's own in all its cards, half the card's
 * alone: an interval does not say which part of it cards share (a judgment).
 */
export function drawGaps(
  children: readonly ChildBeliefs[],
  cards: readonly CardId[],
  times: number,
  random: Random,
): readonly (readonly Gaps[])[] {
  const beliefs = children.map(({ cards: known }) =>
    cards.map((card) => {
      const belief = known.get(card);
      return belief === undefined ? null : beliefOf(belief);
    }),
  );
  return Array.from({ length: times }, () =>
    beliefs.map((row) => {
      const shared = normal(random);
      return Float64Array.from(row, (belief) => {
        if (belief === null) return 0;
        const away = (shared + normal(random)) * Math.SQRT1_2;
        return 1 - chanceOf(belief.middle + belief.deviation * away);
      });
    }),
  );
}

/** The gaps that are expected. */
export function expectedGaps(
  children: readonly ChildBeliefs[],
  cards: readonly CardId[],
): readonly Gaps[] {
  return children.map(({ cards: known }) =>
    Float64Array.from(cards, (card) => 1 - (known.get(card)?.p ?? 1)),
  );
}

/** 5 of 100 lie beyond this many standard deviations of a normal distribution, on either side. */
const DEVIATIONS = 1.6449;

/** No chance is nearer to 0 or 1 than this when its log-odds are taken. */
const EDGE = 0.001;

function beliefOf({ p, low, high }: Pick<Estimate, 'p' | 'low' | 'high'>) {
  return {
    middle: logOdds(p),
    deviation: (logOdds(high) - logOdds(low)) / (2 * DEVIATIONS),
  };
}

function logOdds(chance: number): number {
  const held = Math.min(1 - EDGE, Math.max(EDGE, chance));
  return Math.log(held / (1 - held));
}

function chanceOf(strength: number): number {
  return 1 / (1 + Math.exp(-strength));
}

/** A standard normal number (Box & Muller 1958). */
function normal({ fraction }: Random): number {
  return Math.sqrt(-2 * Math.log(1 - fraction())) * Math.cos(2 * Math.PI * fraction());
}
