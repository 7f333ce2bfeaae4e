import { type Piece, piecesOf } from '../../core/boards/shapes/pieces.ts';
import type { CheckForm, CheckItem, CheckKind } from '../../core/checks/check-form.ts';
import { graphemeShown, isSightId } from '../../core/language/card-id.ts';
import { type SoundStyle, soundLabel } from '../../core/language/phonemes.ts';
import type { CheckRecord } from '../../core/log/class-state.ts';
import { classState } from '../state/open-class.ts';

/** What a kind of check is called. */
export const kindNames: Readonly<Record<CheckKind, string>> = {
  'letter-sounds': 'Letter sounds',
  'nonsense-words': 'Nonsense words',
  'sight-words': 'Words by sight',
};

/** What can be said of a whole item, as it was read. */
export const outcomeNames = {
  'self-corrected': 'fixed alone',
  hesitated: 'helped',
  'left-out': 'left out',
} as const;

/** A form's short name, which its pages bear: `7k2f`. */
export function formName({ seed }: CheckForm): string {
  return (seed % 36 ** 4).toString(36).padStart(4, '0');
}

/** The letters of an item as they are printed: a split card is `a–e`. */
export function itemText({ text }: CheckItem): string {
  return graphemeShown(text);
}

/** Which sounds are right, where a card alone has several that were taught: `/s/ or /z/`; empty for one. */
export function acceptedSaid({ cards, answers }: CheckItem, style: SoundStyle): string {
  if (cards.length > 1 || cards.some(isSightId)) return '';
  const sounds = new Set(answers.map((sounds) => soundLabel(sounds, style)));
  return sounds.size > 1 ? [...sounds].join(' or ') : '';
}

/** An item's cards as they stand in a row; one alone is shown whole. */
export function shownPieces({ cards }: CheckItem): readonly Piece[] {
  return cards.length === 1 ? cards.map((id) => ({ id, part: 'whole' })) : piecesOf(cards);
}

/** Who reads a check. */
export function readerOf({ child }: CheckRecord): string {
  return classState.value.children.get(child)?.name ?? 'A child';
}
