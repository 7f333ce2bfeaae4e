import type { CardId } from '../language/card-id.ts';
import type { Phoneme } from '../language/phonemes.ts';

/** What a short check of one child asks for. */
export const CHECK_KINDS = ['letter-sounds', 'nonsense-words', 'sight-words'] as const;
export type CheckKind = (typeof CHECK_KINDS)[number];

/** How many items stand in a row of a form, as the child sees it. */
export const PER_ROW: Readonly<Record<CheckKind, number>> = {
  'letter-sounds': 10,
  'nonsense-words': 5,
  'sight-words': 5,
};

/** One thing to read. */
export interface CheckItem {
  /** As it is printed: `sh`, `a_e`, `mip`, `was`. */
  readonly text: string;
  /** Card ids from left to right; one for a letter sound, and one for a word known by sight. */
  readonly cards: readonly CardId[];
  /** Every right answer; a grapheme that was taught with two sounds has both. */
  readonly answers: readonly (readonly Phoneme[])[];
}

/** A form: what the child reads, in rows. The same taught set, seed and wishes give the same form. */
export interface CheckForm {
  readonly kind: CheckKind;
  readonly seed: number;
  readonly items: readonly CheckItem[];
  /**
   * The mean hardness of the items, and how far it lies from the mean of all
   * that could have been asked, in standard deviations of single items; both 0
   * for letter sounds and words at sight, where every form asks every card as often.
   */
  readonly hardness: number;
  readonly offBy: number;
}

/** Why there is no form, or a shorter one, in a teacher's words. */
export interface FormShortfall {
  readonly code: 'nothing-taught' | 'no-sight-words' | 'few-words';
  readonly message: string;
}

/** A form and what it could not give. */
export interface MadeForm {
  readonly form: CheckForm;
  readonly shortfall: FormShortfall | null;
}

/** The items of a form in rows, as the child sees them, each with its number in the form. */
export function rowsOf({
  kind,
  items,
}: Pick<CheckForm, 'kind' | 'items'>): readonly (readonly NumberedItem[])[] {
  const numbered = items.map((item, at) => ({ item, at }));
  const size = PER_ROW[kind];
  return Array.from({ length: Math.ceil(items.length / size) }, (_, row) =>
    numbered.slice(row * size, (row + 1) * size),
  );
}

/** An item and its number in the form, counted from 0. */
interface NumberedItem {
  readonly item: CheckItem;
  readonly at: number;
}
