import type { Grade, Sequence } from '../sequence/sequence.ts';
import { coverStandards } from '../sequence/standards.ts';

/** A standard of a grade that is not met yet at a step, and the steps that are still to come for it. */
export interface OpenStandard {
  readonly code: string;
  readonly note: string;
  readonly steps: readonly number[];
}

/** What of a grade's standards will be open when a group stands at a step, by the steps of its order. */
export function openStandards(
  sequence: Sequence,
  grade: Grade,
  upTo: number,
): readonly OpenStandard[] {
  return coverStandards(sequence).flatMap(({ code, grade: its, note, steps, outOfScope }) => {
    const left = steps.filter((step) => step > upTo);
    return its !== grade || outOfScope || left.length === 0 ? [] : [{ code, note, steps: left }];
  });
}
