import type { CardId } from '../../language/card-id.ts';
import { correspondenceById } from '../../language/correspondences.ts';

/**
 * What stands in one place of a row: a whole card, or one half of a split card
 * (`a_e`): the arch where the vowel is heard, the silent e at the end.
 */
export interface Piece {
  readonly id: CardId;
  readonly part: 'whole' | 'vowel' | 'silent-e';
  /** Whether it begins a syllable after the first, where the word was laid in syllables. */
  readonly opens?: true;
}

/**
 * A row of cards as it is shown: a split card's silent e moves behind the last card, or behind the last one
 * of its syllable. `joints`, where the word was laid in syllables, says before which cards the later ones begin.
 */
export function piecesOf(
  cards: readonly CardId[],
  joints: readonly number[] = [],
): readonly Piece[] {
  if (joints.length > 0) {
    return [0, ...joints].flatMap((from, at) =>
      piecesOf(cards.slice(from, joints[at])).map((piece, place) =>
        at > 0 && place === 0 ? { ...piece, opens: true as const } : piece,
      ),
    );
  }
  const split = cards.filter(isSplit);
  return [
    ...cards.map((id): Piece => ({ id, part: isSplit(id) ? 'vowel' : 'whole' })),
    ...split.map((id): Piece => ({ id, part: 'silent-e' })),
  ];
}

/** Which card, counted from 0, each piece of a row belongs to: a silent e to its split card. */
export function ownersOf(pieces: readonly Piece[]): readonly number[] {
  const owners: number[] = [];
  let cards = 0;
  pieces.forEach(({ id, part }, place) => {
    const vowel = pieces.findLastIndex((other, at) => at < place && other.id === id);
    owners.push(part === 'silent-e' ? (owners[vowel] as number) : cards++);
  });
  return owners;
}

/** Equal for pieces that look the same. */
export function pieceKey({ id, part }: Piece): string {
  return `${part} ${id}`;
}

function isSplit(id: CardId): boolean {
  return correspondenceById.get(id)?.grapheme.includes('_') ?? false;
}
