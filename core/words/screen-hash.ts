/**
 * Hashes of runs of codes. What ships to a browser must not show what it
 * screens, so that only hashes are stored: 40 bits, of which 32 find the place
 * and 8 confirm it. Prefix sums of two polynomials modulo 2^32 give the hash of
 * any run of codes in a few multiplications (Karp & Rabin 1987), so that stems,
 * endings and halves of a word cost no second pass; a mixing step (the finalizer
 * of MurmurHash3, public domain) spreads the bits and keeps the spaces apart.
 * A Bloom filter was rejected: it cannot carry a category.
 */
export interface Run {
  readonly codes: Uint8Array;
  /** Prefix hashes; entry i covers the codes before i. */
  readonly first: Int32Array;
  readonly second: Int32Array;
}

/** Separate name spaces for keys: how a run of codes was made. */
export const SPACES = [
  'letters',
  'letter-halves',
  'plain',
  'slips',
  'halves',
  'harmless-letters',
  'harmless-sounds',
] as const;
export type HashSpace = (typeof SPACES)[number];

/** The 32 bits that find an entry (never 0) and the 8 that confirm it. */
export interface CodeHash {
  readonly place: number;
  readonly check: number;
}

const CAPACITY = 64;
const BASE_ONE = 0x9e3779b1 | 0;
const BASE_TWO = 0x85ebca6b | 0;
const powersOne = powersOf(BASE_ONE);
const powersTwo = powersOf(BASE_TWO);
const salts: Readonly<Record<HashSpace, number>> = {
  letters: 0x1b873593,
  'letter-halves': 0x7feb352d,
  plain: 0x2545f491,
  slips: 0x5bd1e995 | 0,
  halves: 0x165667b1,
  'harmless-letters': 0x38495ab5,
  'harmless-sounds': 0x0ab9d2c7,
};

/** The salt of a space, to be passed to `placeOf`. */
export function saltOf(space: HashSpace): number {
  return salts[space];
}

/** A run with room for 64 codes. */
export function makeRun(): Run {
  return {
    codes: new Uint8Array(CAPACITY),
    first: new Int32Array(CAPACITY + 1),
    second: new Int32Array(CAPACITY + 1),
  };
}

/** Fills the prefix hashes for the run's first `count` codes. */
export function sumRun(run: Run, count: number): void {
  const { codes, first, second } = run;
  let one = 0;
  let two = 0;
  for (let i = 0; i < count; i++) {
    const code = codes[i] as number;
    one = (Math.imul(one, BASE_ONE) + code) | 0;
    two = (Math.imul(two, BASE_TWO) + code) | 0;
    first[i + 1] = one;
    second[i + 1] = two;
  }
}

/** The 32 bits that find the codes `from` to `to` (exclusive, not empty); never 0. */
export function placeOf(run: Run, from: number, to: number, salt: number): number {
  return mixed(sumOf(run.first, powersOne, from, to) ^ salt) || 1;
}

/** The 8 bits that confirm the same codes. */
export function checkOf(run: Run, from: number, to: number, salt: number): number {
  return mixed(sumOf(run.second, powersTwo, from, to) ^ salt) >>> 24;
}

/** The hash of a whole list of codes in a space. */
export function hashCodes(codes: ArrayLike<number>, count: number, space: HashSpace): CodeHash {
  const run = makeRun();
  for (let i = 0; i < count; i++) run.codes[i] = codes[i] as number;
  sumRun(run, count);
  const salt = salts[space];
  return { place: placeOf(run, 0, count, salt), check: checkOf(run, 0, count, salt) };
}

function sumOf(sums: Int32Array, powers: Int32Array, from: number, to: number): number {
  return (sums[to] as number) - Math.imul(sums[from] as number, powers[to - from] as number);
}

function mixed(value: number): number {
  let bits = value | 0;
  bits = Math.imul(bits ^ (bits >>> 16), 0x85ebca6b);
  bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2ae35);
  return (bits ^ (bits >>> 16)) | 0;
}

function powersOf(base: number): Int32Array {
  const powers = new Int32Array(CAPACITY + 1);
  powers[0] = 1;
  for (let i = 0; i < CAPACITY; i++) powers[i + 1] = Math.imul(powers[i] as number, base);
  return powers;
}
