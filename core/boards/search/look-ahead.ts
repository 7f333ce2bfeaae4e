/**
 * Which card to branch on, found by trying.
 *
 * Problem: the wrong card first makes a tree ten times as large.
 *
 * Method: strong branching with memory. A promising card is tried both in and
 * out; the one whose two bounds fall most, by their product, is taken, and what
 * each fell by is remembered. Once the cards that did best so far have been
 * tried often enough, the best of them is taken untried. A card that cannot be
 * in, or cannot be out, is settled on the way.
 *
 * Reference: Achterberg, Koch & Martin, "Branching rules revisited", Operations
 * Research Letters 33 (2005), where this is called reliability branching.
 *
 * Alternatives: always trying looks at half as many subproblems again; trusting
 * a card after four tries looks at two to five times as many on strict boards;
 * never trying leaves late strict boards without proof for minutes.
 */
import { FREE, IN, OUT } from './pairs.ts';

/** A card to branch on, and the bounds with it in and out. */
export interface Branching {
  readonly card: number;
  readonly within: number;
  readonly without: number;
}

/** `done`: nothing better is left. `settled`: cards were settled, in place, instead. */
export type BranchChoice = Branching | 'done' | 'settled';

/** Where a card is to be chosen. */
export interface Crossroads {
  readonly status: Uint8Array;
  readonly bound: number;
  /** Only boards worth more than this matter. */
  readonly best: number;
  /** Cards worth trying, the most promising first; asked only when needed. */
  readonly cards: () => readonly number[];
  /** The bound with one card decided. */
  readonly bounded: (card: number, standing: number) => number;
}

/** Cards that did best before and are tried first. */
const REMEMBERED = 3;
/** A card tried so often is known. */
const KNOWN_AFTER = 16;
/** So many cards in a row that are no better end the trying. */
const PATIENCE = 3;
/** A fall of the bound counts as at least this, so that a product never forgets the other side. */
const LEAST_FALL = 0.1;

/** A chooser for one search over so many cards; it remembers from call to call. */
export function makeLookAhead(total: number): (at: Crossroads) => BranchChoice {
  const within = new Float64Array(total);
  const without = new Float64Array(total);
  const tries = new Uint32Array(total);

  return ({ status, bound, best, cards, bounded }) => {
    const known = bestKnown(status);
    if (known.length > 0 && known.every((card) => (tries[card] as number) >= KNOWN_AFTER)) {
      return undecided(known[0] as number, bound);
    }
    let choice: BranchChoice = 'done';
    let most = -1;
    let stale = 0;
    let settled = false;
    for (const card of new Set([...known, ...cards()])) {
      const inside = Math.min(bound, bounded(card, IN));
      const outside = Math.min(bound, bounded(card, OUT));
      if (inside <= best && outside <= best) return 'done';
      if (inside <= best || outside <= best) {
        status[card] = inside <= best ? OUT : IN;
        settled = true;
        continue;
      }
      within[card]! += bound - inside;
      without[card]! += bound - outside;
      tries[card]! += 1;
      const fall = fallOf(bound - inside, bound - outside);
      if (fall > most) {
        most = fall;
        stale = 0;
        choice = { card, within: inside, without: outside };
      } else if (++stale >= PATIENCE) break;
    }
    return settled ? 'settled' : choice;
  };

  /** The free cards whose decision lowered the bounds most so far. */
  function bestKnown(status: Uint8Array): readonly number[] {
    const tried: number[] = [];
    for (let card = 0; card < total; card++) {
      if (status[card] === FREE && tries[card]) tried.push(card);
    }
    return tried.sort((one, other) => averageFall(other) - averageFall(one)).slice(0, REMEMBERED);
  }

  function averageFall(card: number): number {
    const count = tries[card] as number;
    return fallOf((within[card] as number) / count, (without[card] as number) / count);
  }
}

/** A branching of which nothing is known but the bound it comes from. */
export function undecided(card: number, bound: number): Branching {
  return { card, within: bound, without: bound };
}

function fallOf(within: number, without: number): number {
  return Math.max(within, LEAST_FALL) * Math.max(without, LEAST_FALL);
}
