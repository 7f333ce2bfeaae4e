import type { Observation } from '../../core/learners/observation.ts';
import { type Blame, shareBlame } from './blame.ts';

const MOST = 32;
const blame: Blame = { well: new Float64Array(MOST), wrong: new Float64Array(MOST) };

/** How surely each card of a reading went well and went wrong, where `chances` are what was expected. */
export function creditOf(reading: Observation, chances: readonly number[]): Blame {
  const { cards, right, broke } = reading;
  shareBlame(blame, cards.length, Float64Array.from(chances), right, broke);
  return blame;
}
