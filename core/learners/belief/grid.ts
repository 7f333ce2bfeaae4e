/**
 * What is believed of a strength is kept as its likelihood at so many nodes, evenly spaced on the
 * log-odds scale. A bell curve can say neither "known or not" nor "surely above"; a grid can, and its
 * arithmetic is a loop over twenty numbers. With 28 nodes the figures of the model are the same; with
 * 16 its intervals hold one in a hundred fewer.
 */
export const NODES = 20;
export const LOWEST = -5;
export const STEP = 0.6875;
export const HIGHEST = LOWEST + STEP * (NODES - 1);

/** The strength at each node. */
export const GRID: Float64Array = Float64Array.from(
  { length: NODES },
  (_, node) => LOWEST + STEP * node,
);

/** Nodes of the table of the logistic function from one node of the grid to the next. */
export const STRIDE = 22;
const TABLE_STEP = STEP / STRIDE;
const TABLE_END = 24;

/** The logistic function from −24 to 24: a chance from log-odds. */
export const LOGISTIC: Float64Array = Float64Array.from(
  { length: (2 * TABLE_END) / TABLE_STEP + 1 },
  (_, at) => logistic(at * TABLE_STEP - TABLE_END),
);

/**
 * Where in LOGISTIC the lowest node of the grid stands, moved by `offset` and stretched by a whole
 * `slope`; the others follow by STRIDE · slope. Rounded to 1/64 of log-odds.
 */
export function tablePlace(offset: number, slope: number): number {
  const at = Math.round((slope * (LOWEST + offset) + TABLE_END) / TABLE_STEP);
  const last = LOGISTIC.length - 1 - STRIDE * slope * (NODES - 1);
  return at < 0 ? 0 : Math.min(at, last);
}

/** A chance from log-odds. */
export function logistic(logOdds: number): number {
  return 1 / (1 + Math.exp(-logOdds));
}

/** Log-odds from a chance between 0 and 1. */
export function logOdds(chance: number): number {
  return Math.log(chance / (1 - chance));
}
