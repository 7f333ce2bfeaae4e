import { rowsOf } from '../checks/check-form.ts';
import type { CheckReading, ItemMark } from '../checks/score-check.ts';
import type { ChildId, EventId } from '../ids.ts';
import type { CheckRecord, ClassState } from './class-state.ts';
import type { CheckEvent, EventOf, ItemReading } from './event.ts';

/**
 * Reads what came of a check from its events in force, in their order. Null
 * while it is not known how it was begun. Begun twice, it is the check that was
 * first. What is said of items that the form has not is left out.
 */
export function readCheck(events: readonly CheckEvent[]): CheckRecord | null {
  const begun = events.find(
    (event): event is EventOf<'check-begun'> => event.kind === 'check-begun',
  );
  if (begun === undefined) return null;
  const { checkId: id, child, day, form, limit } = begun.body;
  const marks = new Map<number, ItemReading>();
  let markedLast: EventId | null = null;
  let ended: CheckRecord['ended'] = null;
  for (const event of events) {
    if (event.kind === 'check-ended') {
      const { reached, seconds } = event.body;
      ended = { reached: Math.min(reached, form.items.length), seconds };
    } else if (event.kind === 'check-marked') {
      const { item: first, count = 1, outcome, broke } = event.body;
      markedLast = event.id;
      for (let item = first; item < first + count; item++) {
        const cards = form.items[item]?.cards.length ?? 0;
        marks.delete(item);
        if (cards === 0 || outcome === 'right') continue;
        marks.set(item, { outcome, broke: broke.filter(({ card }) => card <= cards) });
      }
    }
  }
  return { id, child, day, form, limit, at: begun.at, marks, markedLast, ended };
}

/** A child's checks, as they were begun. */
export function checksOf(
  { checks }: Pick<ClassState, 'checks'>,
  child: ChildId,
): readonly CheckRecord[] {
  return [...checks.values()].filter((record) => record.child === child);
}

/** A check as it is scored; while it goes on, up to the last item that was marked. */
export function readingOf({ form, marks, ended }: CheckRecord): CheckReading {
  const all = [...marks].map(([at, { outcome, broke }]): ItemMark | null =>
    outcome === 'right' ? null : { at, kind: outcome, cards: broke.map(({ card }) => card) },
  );
  return {
    items: form.items,
    marks: all.filter((mark) => mark !== null),
    reached: ended?.reached ?? Math.max(0, ...[...marks.keys()].map((at) => at + 1)),
    seconds: ended?.seconds ?? null,
    skippedRows: skippedRows(form, marks),
  };
}

/** The rows of which every item was left out. */
function skippedRows(
  form: CheckRecord['form'],
  marks: CheckRecord['marks'],
): NonNullable<CheckReading['skippedRows']> {
  return rowsOf(form)
    .filter((row) => row.every(({ at }) => marks.get(at)?.outcome === 'left-out'))
    .map((row) => ({ from: row[0]?.at ?? 0, count: row.length }));
}
