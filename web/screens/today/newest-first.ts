import type { Sequence } from '../../../core/sequence/sequence.ts';
import { stepOf } from '../../../core/sequence/step-of.ts';

/** Card ids, those taught last first; what no step teaches goes last. */
export function newestFirst(ids: readonly string[], sequence: Sequence): readonly string[] {
  const step = (id: string) => stepOf(sequence, { kind: 'card', id }) ?? 0;
  return ids.toSorted((left, right) => step(right) - step(left));
}
