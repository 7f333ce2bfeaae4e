import './row.css';
import '../../controls/stage-cards.css';
import { type Piece, pieceKey } from '../../../core/boards/shapes/pieces.ts';
import type { RowLayout } from '../../../core/boards/shapes/row-layout.ts';
import { PieceCard } from '../../controls/piece-card.tsx';

interface RowProps {
  readonly pieces: readonly Piece[];
  /** Which card each piece belongs to, counted from 0. */
  readonly cards: readonly number[];
  readonly layout: RowLayout;
  /** How many cards lie open; the others wait face down. */
  readonly open: number;
  /** The card whose sound is to be said; null for none. */
  readonly lit: number | null;
  /** Whether the part to learn of a word known by sight is shown. */
  readonly told: boolean;
  /** Whether a pile's next cards show as an edge beneath. */
  readonly piled: boolean;
  /** Counts the times that a card was asked to turn and could not, and which one. */
  readonly nudged: { readonly card: number; readonly times: number } | null;
}

/** The row of cards. A place keeps its element; only a card that was turned is drawn again. */
export function Row({ pieces, cards, layout, open, lit, told, piled, nudged }: RowProps) {
  const placeClass = (card: number) => {
    const waits = card < open ? '' : ' waiting';
    const nudge = nudged?.card === card ? ` nudged nudged-${nudged.times % 2}` : '';
    return `place${waits}${card === lit ? ' lit' : ''}${nudge}`;
  };
  return (
    <div
      class={`row stage-cards${piled ? ' piled' : ''}${told ? '' : ' untold'}`}
      style={{ fontSize: `${layout.size}px` }}
    >
      {pieces.map((piece, place) => (
        <div
          key={place}
          class={placeClass(cards[place] ?? place)}
          data-card={cards[place] ?? place}
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
