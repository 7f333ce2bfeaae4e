import { type ChildBeliefs, drawGaps } from '../groups/gap-draws.ts';
import type { ChildId } from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import type { Random } from '../random.ts';

/** Her rule for moving on: what share of the children must read today's cards, and how sure that must be; 0 to 1. */
export interface ReadyRule {
  readonly share: number;
  readonly sure: number;
}

/** Four of five children, four times of five (common practice, no source); hers to change. */
export const USUAL_RULE: ReadyRule = { share: 0.8, sure: 0.8 };

/** A child that would probably not read all of the cards, and those that it is least likely to read. */
export interface NotYet {
  readonly child: ChildId;
  /** By how likely it is that they are missed; none where no card alone would be, but one of many. */
  readonly cards: readonly CardId[];
}

/** How many of a group would read its cards tomorrow, each of them once. */
export interface Readiness {
  readonly size: number;
  /** How many are expected to read all of them right, and the 90% range of that number. */
  readonly expected: number;
  readonly low: number;
  readonly high: number;
  /** How many the rule asks for, and how likely it is that so many do. */
  readonly wanted: number;
  readonly sure: number;
  readonly isReady: boolean;
  /** Who is less likely than not to read all of them, the least likely first. */
  readonly notYet: readonly NotYet[];
}

const DRAWINGS = 400;

/** A card is named where it is missed more often than once in five. */
const NAMED = 0.2;

/**
 * What would be read tomorrow, should the group move on: in each of many
 * drawings of what may be true, each child reads each card once. What is said can
 * be seen tomorrow, which a share of children that ‘know’ a card cannot. Null
 * without children or cards.
 */
export function readiness(
  children: readonly ChildBeliefs[],
  cards: readonly CardId[],
  rule: ReadyRule,
  random: Random,
): Readiness | null {
  const size = children.length;
  if (size === 0 || cards.length === 0) return null;
  const draws = drawGaps(children, cards, DRAWINGS, random);
  const chances = draws.map((gaps) =>
    gaps.map((own) => own.reduce((all, gap) => all * (1 - gap), 1)),
  );
  const counts = chances
    .map((row) => row.filter((chance) => random.fraction() < chance).length)
    .sort((one, other) => one - other);
  const wanted = Math.ceil(rule.share * size);
  const sure = counts.filter((count) => count >= wanted).length / DRAWINGS;
  const means = children.map(
    (_, child) => chances.reduce((sum, row) => sum + (row[child] as number), 0) / DRAWINGS,
  );
  return {
    size,
    expected: Math.round(means.reduce((sum, mean) => sum + mean, 0)),
    low: counts[Math.floor(DRAWINGS * 0.05)] as number,
    high: counts[Math.ceil(DRAWINGS * 0.95) - 1] as number,
    wanted,
    sure,
    isReady: sure >= rule.sure,
    notYet: children
      .map(({ id, cards: known }, at) => ({ id, known, mean: means[at] as number }))
      .filter(({ mean }) => mean < 0.5)
      .sort((one, other) => one.mean - other.mean)
      .map(({ id, known }) => ({
        child: id,
        cards: cards
          .map((card) => ({ card, gap: 1 - (known.get(card)?.p ?? 1) }))
          .filter(({ gap }) => gap > NAMED)
          .sort((one, other) => other.gap - one.gap)
          .map(({ card }) => card),
      })),
  };
}

/** The forecast as a sentence: ‘If you teach the next step tomorrow, about 15 of 20 (11–18) would read today’s cards.’ */
export function readinessSaid({ size, expected, low, high }: Readiness): string {
  const range = low === high ? `${low}` : `${low}–${high}`;
  return `If you teach the next step tomorrow, about ${expected} of ${size} (${range}) would read today’s cards.`;
}

/** Her rule beside the forecast, on one measure: ‘At least 5 of 6 is 62% likely, and your rule asks for 80%: not yet.’ */
export function ruleSaid({ wanted, size, sure, isReady }: Readiness, rule: ReadyRule): string {
  const asked = `your rule asks for ${Math.round(rule.sure * 100)}%`;
  return `At least ${wanted} of ${size} is ${likely(sure)} likely, and ${asked}: ${isReady ? 'ready' : 'not yet'}.`;
}

/** A share that is counted from drawings, which never makes a thing certain; rounded down, so as not to reach what it falls short of. */
function likely(sure: number): string {
  if (sure < 0.01) return 'less than 1%';
  return sure > 0.99 ? 'more than 99%' : `${Math.floor(sure * 100 + 1e-9)}%`;
}
