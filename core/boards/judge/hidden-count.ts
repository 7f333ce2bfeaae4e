import type { Tally } from './card-gain.ts';

/** What stays hidden of a board, by why; one count for every screen that tells of it. */
export interface HiddenCount {
  /** All rows that are not shown. */
  readonly all: number;
  /** Of these, what the word screen stops: what nobody wants to hear. */
  readonly toRegret: number;
}

/** Counts what stays hidden of a board. */
export function hiddenCount({ stopped, rule, unfit, untaught }: Tally): HiddenCount {
  return { all: stopped + rule + unfit + untaught, toRegret: stopped };
}
