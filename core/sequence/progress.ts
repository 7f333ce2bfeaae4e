import { correspondenceById } from '../language/correspondences.ts';
import type { Habit, Taught } from '../language/taught.ts';
import { itemKey, sameItem } from './item.ts';
import type { Item, Sequence, Step } from './sequence.ts';
import { teach } from './teach.ts';

/**
 * Where a group stands: an order, the last step taught (0: none yet), and the
 * single items taught besides (`added`) or not yet, although their step was
 * (`dropped`). No item is in both lists.
 */
export interface Progress {
  readonly sequence: Sequence;
  readonly upTo: number;
  readonly added: readonly Item[];
  readonly dropped: readonly Item[];
}

/** A group's place in an order, with nothing added or dropped. */
export function makeProgress(sequence: Sequence, upTo = 0): Progress {
  return setStep({ sequence, upTo: 0, added: [], dropped: [] }, upTo);
}

/** What the group has been taught. A card that a newer version knows is left out; a cluster card one of whose parts was dropped is not shown;
 * `flex`, which comes with longer words, stays out where it was dropped. */
export function taughtOf(progress: Progress): Taught {
  const dropped = new Set(progress.dropped.map(itemKey));
  const items = [...itemsUpTo(progress), ...progress.added].filter((item) => {
    if (dropped.has(itemKey(item))) return false;
    if (item.kind !== 'card') return true;
    const parts = correspondenceById.get(item.id)?.parts;
    if (parts === undefined) return false;
    return !parts.some((id) => dropped.has(itemKey({ kind: 'card', id })));
  });
  const taught = teach(items);
  const flexes = !dropped.has('habit:flex') || taught.habits.has('schwa');
  return flexes ? taught : { ...taught, habits: without(taught.habits, 'flex') };
}

function without(habits: Taught['habits'], habit: Habit): Taught['habits'] {
  return new Set([...habits].filter((other) => other !== habit));
}

/** Sets the last step taught, held to the order's ends. Single items stay as they were. */
export function setStep(progress: Progress, upTo: number): Progress {
  const last = progress.sequence.steps.length;
  return { ...progress, upTo: Math.min(Math.max(Math.trunc(upTo) || 0, 0), last) };
}

/** Marks one item as taught, wherever its step stands. */
export function addItem(progress: Progress, item: Item): Progress {
  const dropped = progress.dropped.filter((other) => !sameItem(other, item));
  const known = [...itemsUpTo(progress), ...progress.added].some((other) => sameItem(other, item));
  return { ...progress, dropped, added: known ? progress.added : [...progress.added, item] };
}

/** Marks one item as not taught, though its step may have been. */
export function dropItem(progress: Progress, item: Item): Progress {
  const added = progress.added.filter((other) => !sameItem(other, item));
  const already = progress.dropped.some((other) => sameItem(other, item));
  return { ...progress, added, dropped: already ? progress.dropped : [...progress.dropped, item] };
}

/** Numbers steps from 1 in the order given. */
export function numberSteps(steps: readonly Step[]): readonly Step[] {
  return steps.map((step, place) => ({ ...step, number: place + 1 }));
}

function itemsUpTo({ sequence, upTo }: Progress): readonly Item[] {
  return sequence.steps.filter((step) => step.number <= upTo).flatMap((step) => step.items);
}
