import { type CardId, makeSightId } from '../language/card-id.ts';
import { correspondenceById } from '../language/correspondences.ts';
import type { Habit, Taught } from '../language/taught.ts';
import type { Item, Sequence } from './sequence.ts';

/**
 * What is known once these items were taught. A cluster or welded card brings its parts; longer words
 * bring `flex`, and so does the vowel that fades, of which it is the first case.
 */
export function teach(items: Iterable<Item>): Taught {
  const correspondences = new Set<CardId>();
  const habits = new Set<Habit>();
  const irregularWords = new Set<string>();
  for (const item of items) {
    if (item.kind === 'habit') habits.add(item.habit);
    else if (item.kind === 'word') irregularWords.add(item.word);
    else {
      correspondences.add(item.id);
      for (const part of correspondenceById.get(item.id)?.parts ?? []) correspondences.add(part);
    }
  }
  if (habits.has('long-words') || habits.has('schwa')) habits.add('flex');
  return { correspondences, habits, irregularWords };
}

/** All that was taught to be read at once, by id: cards, and words known by sight. */
export function allTaught({ correspondences, irregularWords }: Taught): readonly CardId[] {
  return [...correspondences, ...[...irregularWords].map(makeSightId)];
}

/** Everything taught in steps 1 to `upTo`; 0 is nothing, past the end is all. */
export function taughtUpTo(sequence: Sequence, upTo: number): Taught {
  return teach(sequence.steps.filter((step) => step.number <= upTo).flatMap((step) => step.items));
}
