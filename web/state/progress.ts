import { computed } from '@preact/signals';
import type { Group } from '../../core/log/class-state.ts';
import { makeGroupPlace, progressOf } from '../../core/log/group-place.ts';
import { SEQUENCE } from '../../core/sequence/built-in.ts';
import { builtInHere, progressHere, progressListed } from '../../core/sequence/order-here.ts';
import { type Progress, taughtOf } from '../../core/sequence/progress.ts';
import { accent } from './accent.ts';
import { group, recordUndoable } from './open-class.ts';

/** Where the group stands. */
export const progress = computed<Progress>(() => progressAt(group.value.standing));

/** Where a group of this standing is; before the first step when nothing was told of it. */
export function progressAt(standing: Group['standing']): Progress {
  return standing
    ? progressHere(progressOf(standing, SEQUENCE), accent.value)
    : { sequence: builtInHere(accent.value), upTo: 0, added: [], dropped: [] };
}

/** What the group has been taught. */
export const taught = computed(() => taughtOf(progress.value));

/** Whether she has told us anything of this group yet. */
export const told = computed(() => group.value.standing !== null);

/** Whether the order is her own. */
export const hasOwnOrder = computed(() => (group.value.standing?.own ?? null) !== null);

/** Changes where the group stands; can be undone. */
export function setProgress(next: Progress, said: string): void {
  const value = makeGroupPlace(progressListed(next), SEQUENCE);
  recordUndoable(said, {
    kind: 'set',
    body: { of: 'group', id: group.peek().id, field: 'standing', value },
  });
}
