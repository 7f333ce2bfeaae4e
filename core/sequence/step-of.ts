import { correspondenceById } from '../language/correspondences.ts';
import { itemKey } from './item.ts';
import type { Item, Sequence, Step } from './sequence.ts';

/** The first step of each item by its key; parts of cluster cards count where the card stands. */
type StepIndex = ReadonlyMap<string, number>;

/**
 * The number of the step that first teaches an item, or null. A sequence is
 * indexed once, at its first question; each answer after that is one look-up.
 */
export function stepOf(sequence: Sequence, item: Item): number | null {
  let index = indexes.get(sequence);
  if (!index) {
    index = indexSteps(sequence.steps);
    indexes.set(sequence, index);
  }
  return index.get(itemKey(item)) ?? null;
}

/** Builds the index of a sequence's steps. */
function indexSteps(steps: readonly Step[]): StepIndex {
  const index = new Map<string, number>();
  const note = (key: string, number: number): void => {
    if (!index.has(key)) index.set(key, number);
  };
  for (const step of steps) {
    for (const item of step.items) {
      note(itemKey(item), step.number);
      // flex comes with longer words, as it does in teach.
      if (item.kind === 'habit' && /^(long-words|schwa)$/.test(item.habit)) {
        note(itemKey({ kind: 'habit', habit: 'flex' }), step.number);
      }
      if (item.kind !== 'card') continue;
      for (const id of correspondenceById.get(item.id)?.parts ?? []) {
        note(itemKey({ kind: 'card', id }), step.number);
      }
    }
  }
  return index;
}

/** Sequences are values that never change, so an index stays true as long as its sequence lives. */
const indexes = new WeakMap<Sequence, StepIndex>();
