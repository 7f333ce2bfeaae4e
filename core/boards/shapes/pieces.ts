import type { CardId } from '../../language/card-id.ts';
import { correspondenceById } from '../../language/correspondences.ts';

/**
 * What stands in one place of a row: a whole card, or one half of a split card
 * (`a_e`): the arch where the vowel is heard, the silent e at the end.
 */
export interface Piece {
  readonly id: CardId;
  readonly part: 'whole' | 'vowel' | 'silent-e';
}

/** A row of cards as it is shown: a split card's silent e moves behind the last card. */
export function piecesOf(cards: readonly CardId[]): readonly Piece[] {
  const split = cards.filter(isSplit);
  return [
    ...cards.map((id): Piece => ({ id, part: isSplit(id) ? 'vowel' : 'whole' })),
    ...split.map((id): Piece => ({ id, part: 'silent-e' })),
  ];
}

/** Equal for pieces that look the same. */
export function pieceKey({ id, part }: Piece): string {
  return `${part} ${id}`;
}

function isSplit(id: CardId): boolean {
  return correspondenceById.get(id)?.grapheme.includes('_') ?? false;
}
