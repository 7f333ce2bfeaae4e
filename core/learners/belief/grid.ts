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

/** Between a node of the grid and the next the logistic function is known at so many strengths. */
const PER_NODE = 22;
const TABLE_STEP = STEP / PER_NODE;
const TABLE_END = 24;
const TABLE_COUNT = Math.floor((2 * TABLE_END) / TABLE_STEP) + 1;
/** Chances in a run, each a node of the grid after the one before it. */
const RUN = Math.ceil(TABLE_COUNT / PER_NODE);

/**
 * The logistic function from −24 to 24: a chance from log-odds. In runs, one for each strength between
 * two nodes, so that the chances at all nodes of the grid, moved by an offset, lie side by side.
 */
export const LOGISTIC: Float64Array = Float64Array.from({ length: PER_NODE * RUN }, (_, at) =>
  logistic(((at % RUN) * PER_NODE + Math.floor(at / RUN)) * TABLE_STEP - TABLE_END),
);

/** The square root of each number of LOGISTIC. */
export const LOGISTIC_ROOT: Float64Array = LOGISTIC.map(Math.sqrt);

/**
 * Where in LOGISTIC the lowest node of the grid stands, moved by `offset` and stretched by a whole
 * `slope`; the others follow by `slope`. Rounded to 1/64 of log-odds.
 */
export function tablePlace(offset: number, slope: number): number {
  const at = Math.round((slope * (LOWEST + offset) + TABLE_END) / TABLE_STEP);
  const last = TABLE_COUNT - 1 - PER_NODE * slope * (NODES - 1);
  const inside = at < 0 ? 0 : Math.min(at, last);
  return PLACES[inside] as number;
}

/** Where each strength of the table stands in LOGISTIC, from the lowest on. */
const PLACES = Int32Array.from(
  { length: TABLE_COUNT },
  (_, at) => (at % PER_NODE) * RUN + Math.floor(at / PER_NODE),
);

/** A chance from log-odds. */
export function logistic(logOdds: number): number {
  return 1 / (1 + Math.exp(-logOdds));
}

/** Log-odds from a chance between 0 and 1. */
export function logOdds(chance: number): number {
  return Math.log(chance / (1 - chance));
}
