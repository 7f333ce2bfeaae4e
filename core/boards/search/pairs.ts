/** The pairs that a choice of beginnings and endings is made from, and their prices. */
export const FREE = 0;
export const IN = 1;
export const OUT = 2;

/** One side of the choice: where each card stands, and how many may be in. */
export interface Side {
  readonly status: Uint8Array;
  readonly limit: number;
}

export interface PairProblem {
  readonly begin: Side;
  readonly end: Side;
  /** gains[b · endings + e] */
  readonly gains: Int32Array;
  readonly clash: Uint8Array;
}

/** Prices, handed down from a problem to its subproblems. Changed in place. */
export interface Prices {
  readonly lambda: Float64Array;
  readonly mu: Float64Array;
}

/** The cards that are not out, renumbered, with the pairs they make. */
export interface Pairs {
  readonly begins: readonly number[];
  readonly ends: readonly number[];
  readonly begin: Side;
  readonly end: Side;
  /** Half of each pair's gain. */
  readonly half: Float64Array;
  readonly lambda: Float64Array;
  readonly mu: Float64Array;
  readonly clash: Uint8Array;
}

/** Takes the cards that are not out, with copies of their prices. */
export function openPairs({ begin, end, gains, clash }: PairProblem, prices: Prices): Pairs {
  const begins = notOut(begin.status);
  const ends = notOut(end.status);
  const columns = end.status.length;
  const size = begins.length * ends.length;
  const pairs: Pairs = {
    begins,
    ends,
    begin: {
      limit: begin.limit,
      status: Uint8Array.from(begins, (b) => begin.status[b] as number),
    },
    end: { limit: end.limit, status: Uint8Array.from(ends, (e) => end.status[e] as number) },
    half: new Float64Array(size),
    lambda: new Float64Array(size),
    mu: new Float64Array(size),
    clash: new Uint8Array(size),
  };
  let to = 0;
  for (const b of begins) {
    for (const e of ends) {
      const from = b * columns + e;
      pairs.half[to] = (gains[from] as number) / 2;
      pairs.lambda[to] = prices.lambda[from] as number;
      pairs.mu[to] = prices.mu[from] as number;
      pairs.clash[to] = clash[from] as number;
      to++;
    }
  }
  return pairs;
}

/** Writes prices and settled cards back. */
export function closePairs(pairs: Pairs, { begin, end }: PairProblem, prices: Prices): void {
  const columns = end.status.length;
  let from = 0;
  pairs.begins.forEach((b, at) => {
    begin.status[b] = pairs.begin.status[at] as number;
    for (const e of pairs.ends) {
      prices.lambda[b * columns + e] = pairs.lambda[from] as number;
      prices.mu[b * columns + e] = pairs.mu[from] as number;
      from++;
    }
  });
  pairs.ends.forEach((e, at) => {
    end.status[e] = pairs.end.status[at] as number;
  });
}

/** How many cards are in. */
export function countIn(status: Uint8Array): number {
  let found = 0;
  for (let card = 0; card < status.length; card++) if (status[card] === IN) found++;
  return found;
}

function notOut(status: Uint8Array): number[] {
  const cards: number[] = [];
  for (let card = 0; card < status.length; card++) if (status[card] !== OUT) cards.push(card);
  return cards;
}
