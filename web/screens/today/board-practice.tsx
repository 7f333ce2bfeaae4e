import type { Board } from '../../../core/boards/shapes/board.ts';
import { Card } from '../../controls/card.tsx';
import { reasonToRead, wantedOnBoard } from '../../state/review.ts';
import { cardName } from '../../wording/card-name.ts';

/** The cards that were laid on the board for practice, each with why. */
export function BoardPractice({ board }: { readonly board: Board }) {
  const lying = new Set(board.piles.flat());
  const wanted = wantedOnBoard.value.filter((id) => lying.has(id));
  if (wanted.length === 0) return null;
  return (
    <div class="board-practice">
      <h3 class="board-practice-title">Laid there for practice</h3>
      <ul class="board-practice-all">
        {wanted.map((id) => (
          <li key={id} class="board-practice-one">
            <span role="img" aria-label={cardName(id)} title={cardName(id)}>
              <Card id={id} />
            </span>
            <span class="quiet small">{reasonToRead(id)}</span>
          </li>
        ))}
      </ul>
    </div>
  );
}
