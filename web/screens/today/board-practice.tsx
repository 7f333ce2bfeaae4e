import type { Drill } from '../../../core/drills/drill.ts';
import type { CardId } from '../../../core/language/card-id.ts';
import { cardsOnCard } from '../../../core/language/syllable-card.ts';
import { Card } from '../../controls/card.tsx';
import { newestCards } from '../../state/newest-cards.ts';
import { progress } from '../../state/progress.ts';
import { reasonToRead, wantedOnBoard } from '../../state/review.ts';
import { cardName } from '../../wording/card-name.ts';
import { say } from './wording.ts';

/** The cards that were laid on the board for practice, each with why. */
export function BoardPractice({ drill: { board, run } }: { readonly drill: Drill }) {
  const lying = new Set(board.piles.flat().flatMap(cardsOnCard));
  const newest = newestCards(progress.value);
  const wanted = [...new Set([...newest, ...wantedOnBoard.value])].filter((id) => lying.has(id));
  if (wanted.length === 0) return null;
  const flips = (id: CardId) => run.filter(({ cards }) => cards.includes(id)).length;
  return (
    <div class="board-practice">
      <h3 class="board-practice-title">{say.boardPractice.laidThereForPractice}</h3>
      <ul class="board-practice-all">
        {wanted.map((id) => (
          <li key={id} class="board-practice-one">
            <span role="img" aria-label={cardName(id)} title={cardName(id)}>
              <Card id={id} />
            </span>
            <span class="quiet small">
              {say.boardPractice.ofFlips(flips(id), run.length, because(id, newest))}
            </span>
          </li>
        ))}
      </ul>
    </div>
  );
}

function because(id: CardId, newest: readonly CardId[]): string {
  const reason = reasonToRead(id) ?? (newest.includes(id) ? 'new' : null);
  return reason === null ? '' : `: ${reason}`;
}
