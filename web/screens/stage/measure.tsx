import { render } from 'preact';
import { type Piece, pieceKey } from '../../../core/boards/shapes/pieces.ts';
import { PieceCard } from '../../controls/piece-card.tsx';

/** The size at which cards are measured, in pixels; large, so that rounding does not count. */
const measuredAt = 200;

/**
 * The widths of cards in em of their letters, by `pieceKey`: drawn once, out of
 * sight, with the letters' own face, so that whatever the stylesheet says of
 * padding and shapes is true on the stage.
 */
export async function measurePieces(
  pieces: readonly Piece[],
): Promise<ReadonlyMap<string, number>> {
  await document.fonts.load(`400 ${measuredAt}px Andika`);
  const distinct = [...new Map(pieces.map((piece) => [pieceKey(piece), piece])).values()];
  const sheet = document.createElement('div');
  sheet.className = 'measure stage-cards';
  sheet.style.fontSize = `${measuredAt}px`;
  document.body.append(sheet);
  render(
    distinct.map((piece) => (
      <div key={pieceKey(piece)}>
        <PieceCard piece={piece} />
      </div>
    )),
    sheet,
  );
  const widths = [...sheet.children].map(
    (element) => element.getBoundingClientRect().width / measuredAt,
  );
  render(null, sheet);
  sheet.remove();
  return new Map(distinct.map((piece, place) => [pieceKey(piece), widths[place] ?? 1]));
}
