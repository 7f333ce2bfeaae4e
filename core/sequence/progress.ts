import { correspondenceById } from '../language/correspondences.ts';
import type { Taught } from '../language/taught.ts';
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

/** What the group has been taught. A card that a newer version knows is left out; a cluster card one of whose parts was dropped is not shown. */
export function taughtOf(progress: Progress): Taught {
  const dropped = new Set(progress.dropped.map(itemKey));
  const items = [...itemsUpTo(progress), ...progress.added].filter((item) => {
    if (dropped.has(itemKey(item))) return false;
    if (item.kind !== 'card') return true;
    const parts = correspondenceById.get(item.id)?.parts;
    if (parts === undefined) return false;
    return !parts.some((id) => dropped.has(itemKey({ kind: 'card', id })));
  });
  return teach(items);
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

/**
 * Moves a step in the group's own order. All other steps stay taught or
 * untaught as they were; the moved one takes the state of its new place.
 */
export function moveStepOf(progress: Progress, from: number, to: number): Progress {
  const sequence = moveStep(progress.sequence, from, to);
  if (sequence === progress.sequence) return progress;
  const { upTo } = progress;
  const wasTaught = from <= upTo;
  const taughtNow = to <= upTo;
  const shift = Number(taughtNow) - Number(wasTaught);
  return { ...progress, sequence, upTo: upTo + shift };
}

/** Numbers steps from 1 in the order given. */
export function numberSteps(steps: readonly Step[]): readonly Step[] {
  return steps.map((step, place) => ({ ...step, number: place + 1 }));
}

/**
 * Moves the step numbered `from` to stand as number `to`; the steps between
 * move up by one. Numbers outside the order change nothing.
 */
function moveStep(sequence: Sequence, from: number, to: number): Sequence {
  const last = sequence.steps.length;
  const inside = (number: number): boolean =>
    Number.isInteger(number) && number >= 1 && number <= last;
  if (!inside(from) || !inside(to) || from === to) return sequence;
  const steps = [...sequence.steps];
  const [moved] = steps.splice(from - 1, 1) as [Step];
  steps.splice(to - 1, 0, moved);
  return { ...sequence, steps: numberSteps(steps) };
}

function itemsUpTo({ sequence, upTo }: Progress): readonly Item[] {
  return sequence.steps.filter((step) => step.number <= upTo).flatMap((step) => step.items);
}
