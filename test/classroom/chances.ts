import { makeRandom, type Random } from '../../core/random.ts';

/** Draws from the distributions that invented pupils are made of. */
export interface Chances extends Random {
  /** From a normal distribution (Box & Muller 1958). */
  readonly normal: (mean: number, deviation: number) => number;
  /** Evenly from `low` to `high`. */
  readonly between: (low: number, high: number) => number;
  readonly happens: (chance: number) => boolean;
  readonly oneOf: <T>(items: readonly T[]) => T;
}

/** The chances of a seed. */
export function makeChances(seed: number): Chances {
  const random = makeRandom(seed);
  const { fraction, below } = random;
  return {
    ...random,
    normal: (mean, deviation) =>
      mean +
      deviation * Math.sqrt(-2 * Math.log(1 - fraction())) * Math.cos(2 * Math.PI * fraction()),
    between: (low, high) => low + (high - low) * fraction(),
    happens: (chance) => fraction() < chance,
    oneOf: <T>(items: readonly T[]) => items[below(items.length)] as T,
  };
}
