import type { Tally } from '../../../core/boards/judge/card-gain.ts';
import { isTaughtCard } from '../../../core/boards/shapes/taught-cards.ts';
import type { CardId } from '../../../core/language/card-id.ts';
import { correspondenceById } from '../../../core/language/correspondences.ts';
import { isSyllableId } from '../../../core/language/syllable-card.ts';
import { Card } from '../../controls/card.tsx';
import { pinnedCards } from '../../state/boards.ts';
import { cardName } from '../../wording/card-name.ts';
import { cardNote } from '../../wording/card-short.ts';
import type { BoardDesk } from './desk.ts';
import { makeLying } from './moves.ts';
import { tallyInWords } from './said.ts';
import { say } from './wording.ts';

interface BoardCardProps {
  readonly desk: BoardDesk;
  readonly id: CardId;
  /** The pile where it lies, or, in the tray, none. */
  readonly pile: number | null;
  /** What it adds, once that is known. */
  readonly gain: Tally | undefined;
  /** Whether another card beside it has the same letters. */
  readonly isTwin: boolean;
  readonly onOpen: (anchor: HTMLElement) => void;
}

/** A card on the table: its letters, and below them what it adds. */
export function BoardCard({ desk, id, pile, gain, isTwin, onOpen }: BoardCardProps) {
  const card = correspondenceById.get(id);
  const isKnown = isSyllableId(id) || (card !== undefined && isTaughtCard(card, desk.taught));
  const isPinned = pinnedCards.value.includes(id);
  return (
    <button
      type="button"
      class={`board-card ${isKnown ? '' : 'untaught'} ${isPinned ? 'held' : ''}`}
      data-card={id}
      data-drag={makeLying({ id, pile })}
      data-rove
      aria-haspopup="dialog"
      aria-label={nameOf(id, pile, gain, isKnown, isPinned)}
      onClick={(event) => onOpen(event.currentTarget)}
    >
      <Card id={id} />
      <span class="gain" aria-hidden="true">
        {!isKnown && say.boardCard.notTaughtYet}
        {isKnown && gain && (
          <>
            {pile === null && '+'}
            <span class="gain-real">{gain.real}</span> {gain.nonsense}
          </>
        )}
      </span>
      {isTwin && card?.keyword && cardNote(id) === null && (
        <span class="gain" aria-hidden="true">
          {card.keyword}
        </span>
      )}
    </button>
  );
}

function nameOf(
  id: CardId,
  pile: number | null,
  gain: Tally | undefined,
  isKnown: boolean,
  isPinned: boolean,
): string {
  const parts = [cardName(id)];
  if (!isKnown) parts.push(say.boardCard.notTaughtYet);
  else if (gain)
    parts.push(
      `${pile === null ? say.boardCard.wouldAdd : say.boardCard.adds} ${tallyInWords(gain)}`,
    );
  if (isPinned) parts.push(say.boardCard.held);
  return parts.join('. ');
}
