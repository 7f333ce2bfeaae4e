/**
 * How often each of many whole numbers occurs, looked up in one or two steps.
 *
 * Method: a hash table with open addressing and linear probing at most half
 * full (Knuth, The Art of Computer Programming 3, 6.4), its keys and counts in
 * flat arrays; the hash multiplies by the golden ratio (Fibonacci hashing,
 * ibid.). A Map of numbers that are no 31-bit integers boxes each of them and
 * is several times slower.
 */
export interface KeyCounts {
  /** How often a whole number above 0 was counted. O(1) expected. */
  of(key: number): number;
}

/** Counts whole numbers from 1 to 2^53 - 1. */
export function countKeys(keys: readonly number[]): KeyCounts {
  let bits = 1;
  while (2 ** bits < 2 * keys.length) bits++;
  const mask = 2 ** bits - 1;
  const shift = 32 - bits;
  const held = new Float64Array(mask + 1);
  const counts = new Uint16Array(mask + 1);
  for (const key of keys) {
    const slot = slotOf(key);
    held[slot] = key;
    (counts[slot] as number)++;
  }
  return { of: (key) => counts[slotOf(key)] as number };

  /** Where a key stands, or the empty place where it would. */
  function slotOf(key: number): number {
    let slot = Math.imul(key ^ (key / 2 ** 32), GOLDEN) >>> shift;
    while (held[slot] !== key && held[slot] !== 0) slot = (slot + 1) & mask;
    return slot;
  }
}

/** 2^32 divided by the golden ratio, odd. */
const GOLDEN = 0x9e3779b1;
