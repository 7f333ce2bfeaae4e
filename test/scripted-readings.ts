import { type ChildId, type GroupId, groupId } from '../core/ids.ts';
import type { Day } from '../core/learners/day.ts';
import type { Observation } from '../core/learners/observation.ts';
import { parseHeard, readCards } from '../core/learners/written-cards.ts';

/**
 * What a child read on one day, from a line: words apart by spaces, cards by `-`.
 * `sh-i-p` was right; `sh-i-p!` went wrong, not said where; `sh-i-p!2` broke at
 * the second card; `sh-i-p!2:EH` was heard with that sound, `st!1:left-out` so.
 */
export function scriptedReadings(
  child: ChildId,
  day: Day,
  line: string,
  groups: readonly GroupId[] = [groupId('g')],
): readonly Observation[] {
  return line
    .split(/\s+/)
    .filter(Boolean)
    .map((written): Observation => {
      const [cards = '', slip] = written.split('!');
      const [broke = '', heard = ''] = (slip ?? '').split(':');
      const read = readCards(cards, '');
      if (!('ids' in read)) throw new Error(read.message);
      return {
        day,
        child,
        groups,
        task: 'read',
        cards: read.ids,
        right: slip === undefined,
        broke: broke === '' ? null : Number(broke),
        heard: parseHeard(heard),
      };
    });
}
