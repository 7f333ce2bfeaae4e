/**
 * Chance as a value. Generator: xoshiro128** 1.1, its state filled by
 * splitmix32 (Blackman & Vigna, "Scrambled linear pseudorandom number
 * generators", ACM TOMS 47(4), 2021; prng.di.unimi.it). Small, fast, the same in
 * every engine since it uses 32-bit integers only. Not for secrets.
 */
export interface Random {
  /** A whole number, 0 to 2³² − 1. */
  readonly bits: () => number;
  /** A whole number, 0 to `count - 1`; `count` at least 1. */
  readonly below: (count: number) => number;
  /** A number in [0, 1). */
  readonly fraction: () => number;
}

/** The generator of a seed. Any finite number is a seed; equal seeds give equal chance. */
export function makeRandom(seed: number): Random {
  const whole = Math.trunc(seed);
  const fill = splitmix32(((whole % TWO_32) ^ (Math.floor(whole / TWO_32) * 0x85ebca6b)) >>> 0);
  return makeXoshiro([fill(), fill(), fill(), fill()]);
}

/** A new list with the items in another order (Fisher–Yates). */
export function shuffled<T>(items: readonly T[], random: Random): T[] {
  const mixed = [...items];
  for (let last = mixed.length - 1; last > 0; last--) {
    const other = random.below(last + 1);
    [mixed[last], mixed[other]] = [mixed[other] as T, mixed[last] as T];
  }
  return mixed;
}

/** xoshiro128** from its four words of state, not all zero. */
export function makeXoshiro(state: readonly [number, number, number, number]): Random {
  let [a, b, c, d] = state;
  const bits = (): number => {
    const result = Math.imul(rotate(Math.imul(b, 5), 7), 9) >>> 0;
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = rotate(d, 11);
    return result;
  };
  return {
    bits,
    below: (count) => Math.floor((bits() / TWO_32) * count),
    fraction: () => bits() / TWO_32,
  };
}

const TWO_32 = 2 ** 32;

function rotate(word: number, by: number): number {
  return (word << by) | (word >>> (32 - by));
}

function splitmix32(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x9e3779b9) | 0;
    let mixed = state ^ (state >>> 16);
    mixed = Math.imul(mixed, 0x85ebca6b);
    mixed ^= mixed >>> 13;
    mixed = Math.imul(mixed, 0xc2b2ae35);
    return (mixed ^ (mixed >>> 16)) >>> 0;
  };
}
