import './row.css';
import { PieceCard } from './piece-card.tsx';
import { type Piece, pieceKey } from './pieces.ts';
import type { RowLayout } from './row-layout.ts';

interface RowProps {
  readonly pieces: readonly Piece[];
  readonly layout: RowLayout;
  /** How many cards lie open; the others wait face down. */
  readonly open: number;
  /** Whether a pile's next cards show as an edge beneath. */
  readonly piled: boolean;
}

/** The row of cards. A place keeps its element; only a card that was turned is drawn anew. */
export function Row({ pieces, layout, open, piled }: RowProps) {
  return (
    <div class={`row${piled ? ' piled' : ''}`} style={{ fontSize: `${layout.size}px` }}>
      {pieces.map((piece, place) => (
        <div
          key={place}
          class={`place${place < open ? '' : ' waiting'}`}
          style={{ left: `${layout.lefts[place] ?? 0}em` }}
        >
          <div class="turn" key={pieceKey(piece)}>
            <PieceCard piece={piece} />
          </div>
        </div>
      ))}
    </div>
  );
}
