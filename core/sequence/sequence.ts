import type { CardId } from '../language/card-id.ts';
import type { Habit } from '../language/taught.ts';

export const GRADES = ['K', '1', '2', '3'] as const;
export type Grade = (typeof GRADES)[number];

/** One thing that is taught: a card, a habit of spelling, or an irregular word. */
export type Item =
  | { readonly kind: 'card'; readonly id: CardId }
  | { readonly kind: 'habit'; readonly habit: Habit }
  | { readonly kind: 'word'; readonly word: string };

/** A step of the order in which things are taught; `number` counts from 1. */
export interface Step {
  readonly number: number;
  readonly stage: string;
  readonly grade: Grade;
  readonly title: string;
  readonly items: readonly Item[];
  /** Why it stands here, in a teacher's words. */
  readonly why: string;
}

/** A scope and sequence: ours, or a teacher's own. */
export interface Sequence {
  readonly name: string;
  readonly steps: readonly Step[];
}
