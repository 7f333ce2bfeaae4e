/** What this device may do in the class that is open, as whoever shares it has said. */

import { computed, signal } from '@preact/signals';
import type { EventSpec } from '../../core/log/event.ts';
import { mayLead, maySay, type Role } from '../../core/sharing/role.ts';
import { sharing } from './sharing.ts';

/** Its right; null where the class is not shared, and before it is known. */
const myRight = computed<Role | null>(() => {
  const now = sharing.value;
  return now?.rights?.members.get(now.device)?.role ?? null;
});

/** Whether this device follows a warm-up and never leads one. */
export const readsAlong = computed(() => myRight.value !== null && !mayLead(myRight.value));

/** The right by which something that was just done was not noted, until she has seen it. */
export const notNoted = signal<Role | null>(null);

/**
 * Whether all of this may be noted here. What may not would count on no other device: it is not noted here
 * either, and she is told at once.
 */
export function mayNote(specs: readonly EventSpec[]): boolean {
  const role = myRight.peek();
  if (role === null || specs.every(({ kind }) => maySay(role, kind))) return true;
  notNoted.value = role;
  return false;
}
