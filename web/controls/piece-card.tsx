import type { Piece } from '../../core/boards/shapes/pieces.ts';
import { correspondenceById } from '../../core/language/correspondences.ts';
import { CardFace } from './card.tsx';

/** One piece of a row: a card, or the arch or the silent e of a split card. */
export function PieceCard({ piece }: { readonly piece: Piece }) {
  if (piece.part === 'whole') return <CardFace id={piece.id} />;
  if (piece.part === 'silent-e') {
    return (
      <span class="card half" aria-hidden="true">
        e
      </span>
    );
  }
  return (
    <span class="card arch" aria-hidden="true">
      {correspondenceById.get(piece.id)?.grapheme[0]}
    </span>
  );
}
