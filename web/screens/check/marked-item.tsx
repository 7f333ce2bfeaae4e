import type { CheckItem } from '../../../core/checks/check-form.ts';
import type { ItemReading } from '../../../core/log/event.ts';
import { PieceCard } from '../../controls/piece-card.tsx';
import { soundStyle } from '../../state/accent.ts';
import { cardName } from '../../wording/card-name.ts';
import { acceptedSaid, itemText, outcomeNames, shownPieces } from '../../wording/check-names.ts';
import { slipShort } from '../../wording/slip-short.ts';
import { isBroken } from './marking.ts';
import { say } from './wording.ts';

interface MarkedItemProps {
  readonly item: CheckItem;
  /** Counted from 0 within the form. */
  readonly at: number;
  readonly reading: ItemReading | undefined;
  /** It comes after the last one read. */
  readonly isBeyond: boolean;
  /** A card was tapped, counted from 1. */
  readonly onTap: (card: number, anchor: HTMLElement) => void;
}

/** One thing to read: its cards, each to be tapped when it was wrong, and what was said of it. */
export function MarkedItem({ item, at, reading, isBeyond, onTap }: MarkedItemProps) {
  const pieces = shownPieces(item);
  const accepted = acceptedSaid(item, soundStyle.value);
  const outcome = reading?.outcome ?? 'right';
  const state = `of-${outcome}${isBeyond ? ' beyond' : ''}`;
  return (
    <fieldset
      class={`check-item ${state}`}
      data-rove-cell
      aria-label={`${itemText(item)}${saidFor(reading)}`}
    >
      <span class="check-cards">
        {pieces.map((piece, place) => {
          const card = item.cards.indexOf(piece.id, piece.part === 'silent-e' ? 0 : place) + 1;
          const broke = isBroken(reading, card);
          return (
            <button
              key={place}
              type="button"
              class={`check-card${broke ? ' wrong struck' : ''}`}
              aria-pressed={broke}
              aria-label={say.markedItem.wrong(cardName(piece.id))}
              data-rove
              data-item={at}
              data-card={card}
              onClick={(event) => onTap(card, event.currentTarget)}
            >
              <PieceCard piece={piece} />
            </button>
          );
        })}
      </span>
      {accepted !== '' && (
        <span class="check-accepted">
          <span class="for-ears">{say.markedItem.right} </span>
          {accepted}
        </span>
      )}
      <span class="check-said" aria-hidden="true">
        {saidShort(reading)}
      </span>
    </fieldset>
  );
}

function saidShort(reading: ItemReading | undefined): string {
  if (!reading || reading.outcome === 'right') return '';
  if (reading.outcome !== 'wrong') return outcomeNames[reading.outcome];
  return reading.broke
    .flatMap(({ heard }) => (heard ? slipShort(heard, soundStyle.value) : []))
    .join(', ');
}

function saidFor(reading: ItemReading | undefined): string {
  if (!reading || reading.outcome === 'right') return '';
  const said = saidShort(reading);
  return reading.outcome === 'wrong'
    ? say.markedItem.wrongHere(said && say.markedItem.heard(said))
    : `, ${said}`;
}
