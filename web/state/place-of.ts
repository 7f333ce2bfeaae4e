import type { Group } from '../../core/log/class-state.ts';
import { progressOf } from '../../core/log/group-place.ts';
import { SEQUENCE } from '../../core/sequence/built-in.ts';

/** Where a group stands, in few words: `step 30 of 136`. */
export function placeOf({ standing }: Group): string {
  if (!standing) return 'nothing taught yet';
  const { upTo, sequence } = progressOf(standing, SEQUENCE);
  return upTo === 0 ? 'nothing taught yet' : `step ${upTo} of ${sequence.steps.length}`;
}
