import type { Share } from '../../../core/papers/spelling-shown.ts';
import { say } from './wording.ts';

/** A share as a table shows it: *3 of 4*; a dash where nothing was asked. */
export function shareSaid({ times, of }: Share): string {
  return of === 0 ? '–' : say.shareSaid.of(times, of);
}
