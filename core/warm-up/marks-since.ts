import type { DrillRecord, Mark } from '../log/class-state.ts';
import { isBefore } from '../log/is-before.ts';
import type { Led } from './lead.ts';
import type { Moment } from './moments.ts';
import { momentAt } from './standing.ts';

/**
 * The marks made since a moment came up last: by what the log knows, and by what was done here and the lead
 * has not noted yet. On a device that is cut off a card that comes again has no mark yet, though it was
 * marked the first time.
 */
export function marksSince(
  moment: Moment,
  { shown, marks }: Pick<DrillRecord, 'shown' | 'marks'>,
  waiting: Led['waiting'],
  moments: readonly Moment[],
): readonly Mark[] {
  const isHere = (one: Pick<Moment, 'part' | 'place'> | undefined) =>
    one?.part === moment.part && one.place === moment.place;
  const waits = waiting.findLast(
    ({ noted: { before, after } }) =>
      before.standing.at !== after.standing.at && isHere(momentAt(after.standing, moments)),
  );
  const came = waits
    ? { at: 0, count: waits.noted.after.count }
    : (shown.findLast(isHere) ?? { at: 0 });
  return marks.filter((mark) => isHere(mark) && !isBefore(mark, came));
}
