import { type CardNumbers, pileStatus } from './card-numbers.ts';
import type { Clauses } from './forbidden.ts';
import { FREE, IN, OUT } from './pairs.ts';

/**
 * Puts cards out that would complete a forbidden set or overfill a pile, in
 * place. Returns the clauses still open, of those given; null when one is
 * complete, or a pile is overfull or has no card left.
 */
export function settleClauses(
  numbers: CardNumbers,
  { cards, width }: Clauses,
  limits: readonly number[],
  status: Uint8Array,
  given: Int32Array,
): Int32Array | null {
  const live = given.slice();
  let count = live.length;
  for (let changed = true; changed; ) {
    changed = false;
    let kept = 0;
    for (let k = 0; k < count; k++) {
      const clause = live[k] as number;
      let frees = 0;
      let free = -1;
      for (let at = clause * width, stop = at + width; at < stop; at++) {
        const card = cards[at] as number;
        if (card < 0) break;
        if (status[card] === IN) continue;
        if (status[card] === OUT) {
          frees = -1;
          break;
        }
        frees++;
        free = card;
      }
      if (frees === 0) return null;
      if (frees === 1) {
        status[free] = OUT;
        changed = true;
      } else if (frees > 1) live[kept++] = clause;
    }
    count = kept;
    for (let pile = 0; pile < limits.length; pile++) {
      const filled = fillPile(pileStatus(numbers, status, pile), limits[pile] as number);
      if (filled === 'impossible') return null;
      if (filled === 'filled') changed = true;
    }
  }
  return live.subarray(0, count);
}

/** Takes the free cards that no open clause is about, in piles where all that are left fit. */
export function takeUndisputed(
  numbers: CardNumbers,
  { cards, width }: Clauses,
  limits: readonly number[],
  status: Uint8Array,
  live: Int32Array,
): void {
  let disputed: Uint8Array | null = null;
  for (let pile = 0; pile < limits.length; pile++) {
    const own = pileStatus(numbers, status, pile);
    if (!own.includes(FREE) || countLeft(own) > (limits[pile] as number)) continue;
    if (!disputed) {
      disputed = new Uint8Array(numbers.total);
      for (let k = 0; k < live.length; k++) {
        for (let at = (live[k] as number) * width, stop = at + width; at < stop; at++) {
          const card = cards[at] as number;
          if (card >= 0) disputed[card] = 1;
        }
      }
    }
    const start = numbers.starts[pile] as number;
    for (let card = 0; card < own.length; card++) {
      if (own[card] === FREE && !disputed[start + card]) own[card] = IN;
    }
  }
}

function fillPile(own: Uint8Array, limit: number): 'open' | 'filled' | 'impossible' {
  let chosen = 0;
  let free = 0;
  for (let card = 0; card < own.length; card++) {
    if (own[card] === IN) chosen++;
    else if (own[card] === FREE) free++;
  }
  if (chosen > limit || chosen + free === 0) return 'impossible';
  if (chosen < limit || free === 0) return 'open';
  for (let card = 0; card < own.length; card++) if (own[card] === FREE) own[card] = OUT;
  return 'filled';
}

function countLeft(own: Uint8Array): number {
  let left = 0;
  for (let card = 0; card < own.length; card++) if (own[card] !== OUT) left++;
  return left;
}
