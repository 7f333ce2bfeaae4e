import type { DrillRecord } from '../../core/log/class-state.ts';
import type { EventSpec } from '../../core/log/event.ts';
import { classState, recordUndoable } from './open-class.ts';

/** Takes a warm-up out of the record: it counts nowhere any more, and can be put back. */
export function discard({ begunBy }: Pick<DrillRecord, 'begunBy'>): void {
  const specs = begunBy.map((event): EventSpec => ({ kind: 'undone', body: { event } }));
  recordUndoable('Took a warm-up out of the record.', ...specs);
}

/** Puts a warm-up back that was taken out of the record. */
export function putBack({ begunBy }: Pick<DrillRecord, 'begunBy'>): void {
  const { undos } = classState.peek().facts;
  const ids = new Set(begunBy);
  const strikes = undos.filter(({ body }) => ids.has(body.event));
  const specs = strikes.map(({ id }): EventSpec => ({ kind: 'undone', body: { event: id } }));
  recordUndoable('Put a warm-up back into the record.', ...specs);
}
