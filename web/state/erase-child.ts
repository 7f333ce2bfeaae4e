import { computed } from '@preact/signals';
import { eventsIn } from '../../core/log/class-events.ts';
import type { Child } from '../../core/log/class-state.ts';
import { idsToErase } from '../../core/log/erased.ts';
import { forgetLeftoversOf } from './leftovers.ts';
import { classState, isLookedAt, sharedAs, store } from './open-class.ts';
import { sharing } from './sharing.ts';

/** Whether everything about a child can be deleted here: in a shared class by an owner's device alone. */
export const mayErase = computed(() => {
  if (isLookedAt.value) return false;
  if (sharedAs.value === null) return true;
  const now = sharing.value;
  return now?.rights?.members.get(now.device)?.role === 'owner';
});

/**
 * Deletes everything about a child for good: from both copies on this device, and where the class is shared
 * from every other one and the server; null, or why it could not be done: a sentence of the store, or a code
 * of sharing.
 */
export async function eraseChild({
  id,
  name,
}: Child): Promise<{ readonly message: string } | { readonly why: string } | null> {
  const { id: classId } = classState.peek();
  const ids = idsToErase(eventsIn(classState.peek()), id);
  if (sharedAs.peek() === null) {
    const outcome = await store.remove(classId, ids);
    if ('error' in outcome) return outcome.error;
  } else {
    const { purge } = await import('./sharing-acts.ts');
    const done = await purge(ids);
    if ('why' in done) return done;
  }
  forgetLeftoversOf(id, name);
  return null;
}
