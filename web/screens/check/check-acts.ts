import type { CheckForm } from '../../../core/checks/check-form.ts';
import { type CheckId, checkId } from '../../../core/ids.ts';
import type { CheckRecord, Child } from '../../../core/log/class-state.ts';
import type { ItemReading } from '../../../core/log/event.ts';
import { newId } from '../../device/log/ids.ts';
import { openCheck } from '../../state/check-choice.ts';
import { today } from '../../state/day.ts';
import { classState, record, recordUndoable, takeBack } from '../../state/open-class.ts';
import { noteUndo } from '../../state/undo.ts';
import { say } from './wording.ts';

/** A child begins to read; from now on all that is marked is kept. */
export function beginCheck(child: Child, form: CheckForm, limit: number | null): void {
  const id = checkId(newId());
  record({
    kind: 'check-begun',
    body: { checkId: id, child: child.id, day: today(), form, limit },
  });
  openCheck(id);
}

/** Says how an item was read, or so many from it on; `undoMark`, or Ctrl+Z, takes it back. */
export function markItem(
  { id: checkId }: CheckRecord,
  item: number,
  { outcome, broke }: ItemReading,
  said: string,
  count = 1,
): void {
  const several = count > 1 ? { count } : {};
  record({ kind: 'check-marked', body: { checkId, item, ...several, outcome, broke } });
  noteUndo(said, () => undoMark(checkId));
}

/** Takes back what was marked last in a check; nothing when nothing was. */
export function undoMark(checkId: CheckId): void {
  const last = classState.peek().checks.get(checkId)?.markedLast ?? null;
  if (last !== null) takeBack([{ id: last }]);
}

/** Ends a check after so many items and seconds; said again, it is mended. Can be undone. */
export function endCheck(
  { id: checkId }: CheckRecord,
  reached: number,
  seconds: number | null,
): void {
  recordUndoable(say.checkActs.theCheckIsKept, {
    kind: 'check-ended',
    body: { checkId, reached, seconds },
  });
}

/** Takes a check out of the child's list, with all that was marked; can be undone. */
export function takeOut({ id }: CheckRecord, name: string): void {
  const events = classState.peek().facts.checks.get(id) ?? [];
  openCheck(null);
  recordUndoable(
    say.checkActs.tookOutSCheck(name),
    ...events
      .filter(({ kind }) => kind === 'check-begun')
      .map((event) => ({ kind: 'undone', body: { event: event.id } }) as const),
  );
}
