import type { Book, Reader } from './book.ts';
import { COULD, HAPPENED } from './book.ts';
import { AVERAGES, CHANCE, forecastInto } from './forecast.ts';
import { logistic, logOdds, NODES, STEP } from './grid.ts';
import { cautious, gridWeight, guessOf, knownFrom, knownOn, slipOf } from './known-or-not.ts';
import type { LaidReading } from './lay.ts';
import { toldOf } from './pair.ts';
import { fillPrior } from './prior.ts';
import { cardOf } from './spots.ts';
import { type Cavity, cavityInto, centerOf, type Fit } from './usual.ts';

/** The chance of each card of a reading that is laid out, by what is usual in the class. */
export function expectReading(
  book: Book,
  fit: Fit,
  laid: LaidReading,
  count: number,
  reader: Reader,
  day: number,
  isMixed: boolean,
): readonly number[] {
  return Array.from({ length: count }, (_, spot) => {
    const pair = laid.pairs[spot] as number;
    cavityInto(cavity, fit, reader.number, cardOf(laid.spots[spot] as number), pair);
    const variance = cavity.readerVariance + cavity.cardVariance;
    fillPrior(prior, STEP, centerOf(fit, cavity), variance, fit.pairSpread, fit.tailShare);
    forecastInto(averages, 0, prior, 0, book.pairs.numbers, pair, laid.tables[spot] as number, 1);
    const p = averages[CHANCE] as number;
    const mixed = isMixed ? mix(book, p, reader.row, laid.cards[spot] as number, pair, day) : p;
    return Math.min(0.999, Math.max(0.001, mixed));
  });
}

const cavity: Cavity = { reader: 0, readerVariance: 1, card: 0, cardVariance: 1 };
const prior = new Float64Array(NODES);
const averages = new Float64Array(AVERAGES);

function mix(
  { common, readers, cards, pairs }: Book,
  p: number,
  reader: number,
  card: number,
  pair: number,
  day: number,
): number {
  const all = common.knownOrNot;
  const slips = slipOf(
    all,
    readers.numbers[reader + HAPPENED] as number,
    readers.numbers[reader + COULD] as number,
  );
  const guesses = guessOf(
    all,
    cards.numbers[card + HAPPENED] as number,
    cards.numbers[card + COULD] as number,
  );
  const known = knownOn(all, pairs.numbers, pair, day, knownFrom(p, slips, guesses));
  const weight = gridWeight(all, pairs.numbers, pair);
  const grid = logistic(cautious(all, logOdds(p), toldOf(pairs.numbers, pair)));
  return weight * grid + (1 - weight) * (known * (1 - slips) + (1 - known) * guesses);
}
