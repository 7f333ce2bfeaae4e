import type { DrillRecord } from '../log/class-state.ts';
import type { Moment } from './moments.ts';
import { RETURNS_AFTER, type Standing, standingAt } from './standing.ts';

/** So far ahead a moment was come to by skipping; further, by turning a card. */
const SKIPS = 4;

/**
 * Where a warm-up stood, by what the log says came up. What was corrected and
 * has not come again is still to come. A skipped card leaves no trace in the
 * log: what was passed over counts as skipped, except where a card was turned to
 * a word of further on, after which the run goes on where it was left. Where the
 * plan has become shorter since, what is gone from it is not to come.
 */
export function takenUpAt(
  { shown, corrections }: Pick<DrillRecord, 'shown' | 'corrections'>,
  moments: readonly Moment[],
): Standing {
  const numberOf = ({ part, place }: Pick<Moment, 'part' | 'place'>) =>
    moments.findIndex((moment) => moment.part === part && moment.place === place);
  const seen = shown.map(numberOf).filter((number) => number >= 0);
  const last = seen.at(-1);
  if (last === undefined) return standingAt(moments.length);
  const past = pastOf(seen, moments);
  const cameAgain = ({ part, place, at }: (typeof corrections)[number]) =>
    shown.some((event) => event.part === part && event.place === place && event.at > at);
  const isReturn = corrections.some((one) => numberOf(one) === last && cameAgain(one));
  const at = isReturn ? past.length : past.indexOf(last);
  const ahead = moments.map((_, number) => number).filter((number) => !past.includes(number));
  let order: readonly number[] = [...past, ...(isReturn ? [last] : []), ...ahead];
  const toCome = corrections.filter((one) => numberOf(one) >= 0 && !cameAgain(one));
  for (const correction of toCome) {
    const since = shown.filter((event) => event.at > correction.at).length;
    const due = Math.min(at + Math.max(RETURNS_AFTER - since, 1), order.length);
    order = order.toSpliced(due, 0, numberOf(correction));
  }
  const skipped = past.flatMap((number, place) => (seen.includes(number) ? [] : [place]));
  return { ...standingAt(moments.length, at), order, skipped };
}

/** The moments that lie behind, in the order in which they came, skipped ones in their place. */
function pastOf(seen: readonly number[], moments: readonly Moment[]): readonly number[] {
  const past: number[] = [];
  let passed = -1;
  for (const number of seen) {
    if (past.includes(number)) continue;
    const turned = number > passed + SKIPS && moments[number]?.part === moments[passed]?.part;
    if (number > passed && !turned) {
      for (let skipped = passed + 1; skipped < number; skipped++) {
        if (!past.includes(skipped)) past.push(skipped);
      }
      passed = number;
    }
    past.push(number);
  }
  return past;
}
