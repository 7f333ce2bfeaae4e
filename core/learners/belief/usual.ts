import { CAUTION } from './numbers.ts';
import { PAIR_WIDTH } from './pair.ts';

/** What is usual in a class. Sums are of natural parameters: precision, and mean times precision. */
export interface Fit {
  /** By the number of a reader: what its pairs say of it. */
  readonly readerPrecision: Float64Array;
  readonly readerWeighted: Float64Array;
  /** By card number. */
  readonly cardPrecision: Float64Array;
  readonly cardWeighted: Float64Array;
  /** By the number of a pair: its part in these four sums, in this order. */
  readonly messages: Float64Array;
  /** How strong cards are on average. */
  mean: number;
  /** How far children, cards and pairs differ: variances; and the share of pairs in the heavy tail. */
  childSpread: number;
  cardSpread: number;
  pairSpread: number;
  tailShare: number;
}

/** The pairs that readings tell of, each with the numbers of its reader and card. */
export interface ToldPairs {
  readonly pairs: readonly number[];
  readonly readers: readonly number[];
  readonly cards: readonly number[];
  /** Where those of children stand in these lists: a choir is a mean, and tells nothing of how pairs differ. */
  readonly ofChildren: readonly number[];
}

/** Numbers in the message of a pair. */
export const MESSAGE = 4;

const LEAST_PRECISION = 1e-6;

/** What all other pairs say of the sum of a reader and a card: each one's mean and variance. */
export interface Cavity {
  reader: number;
  readerVariance: number;
  card: number;
  cardVariance: number;
}

/** Writes the cavity of a pair; −1 for a reader, card or pair that nothing is known of. */
export function cavityInto(
  into: Cavity,
  fit: Fit,
  reader: number,
  card: number,
  pair: number,
): void {
  const at = pair < 0 ? -1 : (pair / PAIR_WIDTH) * MESSAGE;
  const has = at >= 0 && at < fit.messages.length;
  const { messages } = fit;
  const readerPrecision = Math.max(
    LEAST_PRECISION,
    numberAt(fit.readerPrecision, reader) -
      (has ? (messages[at] as number) : 0) +
      1 / fit.childSpread,
  );
  const readerWeighted =
    numberAt(fit.readerWeighted, reader) - (has ? (messages[at + 1] as number) : 0);
  const cardPrecision = Math.max(
    LEAST_PRECISION,
    numberAt(fit.cardPrecision, card) -
      (has ? (messages[at + 2] as number) : 0) +
      1 / fit.cardSpread,
  );
  const cardWeighted =
    numberAt(fit.cardWeighted, card) -
    (has ? (messages[at + 3] as number) : 0) +
    fit.mean / fit.cardSpread;
  into.reader = readerWeighted / readerPrecision;
  into.readerVariance = 1 / readerPrecision;
  into.card = cardWeighted / cardPrecision;
  into.cardVariance = 1 / cardPrecision;
}

/** Where a pair is expected to stand before its own readings are counted in. */
export function centerOf(fit: Fit, { reader, card }: Cavity): number {
  return reader + card - CAUTION.usual * (reader + card - fit.mean);
}

function numberAt(numbers: Float64Array, at: number): number {
  return at >= 0 && at < numbers.length ? (numbers[at] as number) : 0;
}
