import { type CardId, graphemeOf } from '../../../core/language/card-id.ts';
import './mark-row.css';
import '../../controls/desk-cards.css';
import { pieceKey } from '../../../core/boards/shapes/pieces.ts';
import { cardPlaces, type Moment } from '../../../core/warm-up/moments.ts';
import { PieceCard } from '../../controls/piece-card.tsx';
import { vibrate } from '../../device/vibrate.ts';
import { mark, marksAt, type Which } from '../../warm-up/marking.ts';
import { cardName } from '../../wording/card-name.ts';
import { cardNote } from '../../wording/card-short.ts';
import { say } from './wording.ts';

interface MarkRowProps {
  readonly which: Which;
  readonly moment: Moment;
  /** How many cards the children see; the others are still face down. */
  readonly open: number;
  /** The card whose sound is to be said; null for none. */
  readonly lit: number | null;
}

/** A row of cards, each a button that marks it as broken. A silent e marks its split card. */
export function MarkRow({ which, moment, open, lit }: MarkRowProps) {
  const marks = marksAt(moment);
  const cards = cardPlaces(moment);
  const room = moment.pieces.reduce((sum, { id }) => sum + widthOf(id), 0);
  return (
    <fieldset
      class={`mark-row desk-cards of-${which}`}
      style={{ '--room': room }}
      aria-label={names[which]}
    >
      {moment.pieces.map((piece, place) => {
        const card = cards[place] ?? place;
        const broke = marks.some((one) => one.broke === card + 1);
        const state = `${card < open ? '' : ' closed'}${card === lit ? ' to-say' : ''}`;
        return (
          <button
            key={`${place} ${pieceKey(piece)}`}
            type="button"
            class={`mark-card${broke ? ' broke' : ''}${state}${piece.opens ? ' opens' : ''}`}
            aria-pressed={broke}
            aria-label={say.markRow.broke(cardName(piece.id), syllableOf(moment, card))}
            onClick={() => {
              vibrate();
              mark(which, card + 1);
            }}
          >
            <PieceCard piece={piece} />
            {piece.part !== 'silent-e' && <Note id={piece.id} />}
            {which === 'now' && place === card && <kbd class="key">{card + 1}</kbd>}
          </button>
        );
      })}
    </fieldset>
  );
}

/** Which of two cards with the same letters it is. */
function Note({ id }: { readonly id: CardId }) {
  const note = cardNote(id);
  return note === null ? null : <span class="card-note">{note}</span>;
}

/** In which syllable of a longer word a card stands; nothing of any other row. */
function syllableOf(moment: Moment, card: number): string {
  const joints = moment.part === 'blending' ? moment.flip.joints : undefined;
  if (!joints) return '';
  const at = joints.filter((joint) => joint <= card).length;
  return say.markRow.inSyllable(
    [say.markRow.theFirst, say.markRow.theSecond, say.markRow.theThird, say.markRow.theFourth][
      at
    ] ?? say.markRow.theLast,
  );
}

const names: Readonly<Record<Which, string>> = {
  now: say.markRow.touchTheCard,
  before: say.markRow.theWordBefore,
};

/** About how wide a card is, in em of its letters, with the space beside it. */
function widthOf(id: CardId): number {
  const letters = graphemeOf(id).replace('_e', '').length;
  return Math.max(1.75, 0.58 * letters + 0.75) + 0.25;
}
