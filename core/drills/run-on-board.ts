import type { WordTable } from '../boards/judge/word-table.ts';
import { type BuiltRun, makeRun } from '../boards/runs/run.ts';
import type { Lexicon } from '../words/lexicon.ts';
import { type RunSpec, runWishesOf, runWishesOn } from './drill-spec.ts';

/** So many of the flips over syllables are real words at least; ours. */
const LEAST_REAL = 0.6;
/** So often a run is made shorter: each has its own real words, which may be fewer. */
const TRIES = 3;

/**
 * The run that a drill has over a board; whoever tells of that run asks here. One of syllables with too few
 * real words for the length that was asked is shorter rather than filled up with nonsense: at least three in
 * five of its flips are real, where any are. `seed` is the run's own.
 */
export function runOnBoard(
  table: WordTable,
  spec: RunSpec & { readonly seed: number },
  lexicon: Lexicon,
): BuiltRun {
  const wishes = runWishesOn(table.shape.id, runWishesOf(spec, spec.seed));
  let run = makeRun(table, wishes, lexicon);
  if (table.shape.form !== 'beats') return run;
  for (let turn = 0; turn < TRIES; turn++) {
    const real = run.flips.filter(({ kind }) => kind === 'real').length;
    const flips = Math.floor(real / LEAST_REAL);
    if (real === 0 || run.flips.length <= flips) return run;
    const shorter = makeRun(table, { ...wishes, flips }, lexicon);
    const missing = wishes.flips - shorter.flips.length;
    run = { ...shorter, missing: { ...shorter.missing, flips: missing } };
  }
  return run;
}
