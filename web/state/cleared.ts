import { effect, signal } from '@preact/signals';
import { nameOfClass } from './class-list.ts';
import { classState } from './open-class.ts';
import { type Sharing, sharing } from './sharing.ts';

/** A class that was shared and has left this device, and why; null when she has put the notice away. */
export const cleared = signal<{ readonly name: string; readonly why: string } | null>(null);

/**
 * From now on a class that this device was removed from, or that is shared no more, clears itself from it,
 * as soon as nothing that was recorded here would be lost with it.
 */
export function clearClosed(): void {
  effect(() => {
    const now = sharing.value;
    if (now && isClosed(now) && now.state.unsent === 0) void clear(now);
  });
}

/** Whether what was recorded here never reached the others, and never will. */
export function isStranded(now: Sharing): boolean {
  return isClosed(now) && now.state.unsent > 0;
}

/** Clears the class from this device. */
export async function clear({ classId, state: { why } }: Sharing): Promise<void> {
  if (classState.peek().id !== classId) return;
  const name = nameOfClass(classState.peek());
  const { forgetClass } = await import('./forget-class.ts');
  if ((await forgetClass(classId)) === null) cleared.value = { name, why: why ?? '' };
}

function isClosed({ state: { where } }: Sharing): boolean {
  return where === 'closed';
}
