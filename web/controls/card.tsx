import { type CardId, graphemeOf, isSightId } from '../../core/language/card-id.ts';
import './card.css';
import { piecesOf } from '../../core/boards/shapes/pieces.ts';
import { type CardShape, cardShape, shapeOfCard } from '../../core/language/card-shape.ts';
import type { Correspondence } from '../../core/language/correspondence.ts';
import { correspondenceById } from '../../core/language/correspondences.ts';
import { cardsOnCard, isSyllableId } from '../../core/language/syllable-card.ts';
import { partsOfSight } from '../state/sight.ts';
import { cardNote } from '../wording/card-short.ts';

/**
 * One card, drawn at the size of the text around it; where another taught card
 * has the same letters, with the keyword that tells them apart beneath. Its name
 * for screen readers belongs to the button or list that holds it (`cardName`).
 */
export function Card({
  id,
  class: extra = '',
  among,
}: {
  readonly id: CardId;
  readonly class?: string;
  /** The look-alikes among the cards that it is chosen from; those that were taught when left out. */
  readonly among?: ReadonlySet<string>;
}) {
  const note = cardNote(id, among);
  if (note === null) return <CardFace id={id} class={extra} />;
  return (
    <span class="noted-card">
      <CardFace id={id} class={extra} />
      <span class="card-note" aria-hidden="true">
        {note}
      </span>
    </span>
  );
}

/** The face of a card alone, as the children see it: letters, and nothing else. */
export function CardFace({
  id,
  class: extra = '',
}: {
  readonly id: CardId;
  readonly class?: string;
}) {
  if (isSightId(id)) return <Slip id={id} class={extra} />;
  if (isSyllableId(id)) return <Syllable id={id} class={extra} />;
  const card = correspondenceById.get(id);
  const grapheme = card?.grapheme ?? id;
  const shape = cardShape(card);
  if (shape === 'split') {
    return (
      <span class={`split ${extra}`} aria-hidden="true">
        <span class="card arch">{grapheme[0]}</span>
        <span class="gap" />
        <span class="card half">e</span>
      </span>
    );
  }
  return (
    <span class={`card ${shape} ${extra}`} aria-hidden="true">
      {letters(shape, grapheme, card)}
    </span>
  );
}

/** A syllable: one tile, its vowel in an arch; silent e at its end. */
function Syllable({ id, class: extra }: { readonly id: CardId; readonly class: string }) {
  return (
    <span class={`card syllable ${extra}`} aria-hidden="true">
      {piecesOf(cardsOnCard(id)).map(({ id: own, part }, at) => {
        const letters = graphemeOf(own);
        const isArch = shapeOfCard(own) === 'arch' || part === 'vowel';
        return (
          <span key={at} class={isArch ? 'part nucleus' : 'part'}>
            {part === 'silent-e' ? 'e' : part === 'vowel' ? letters[0] : letters}
          </span>
        );
      })}
    </span>
  );
}

/** A word known by sight: a slip with an ink spine; the part to learn is dotted beneath. */
function Slip({ id, class: extra }: { readonly id: CardId; readonly class: string }) {
  return (
    <span class={`card slip ${extra}`} aria-hidden="true">
      {partsOfSight(id).map(({ letters, byHeart }, at) => (
        <span key={at} class={byHeart ? 'by-heart' : undefined}>
          {letters}
        </span>
      ))}
    </span>
  );
}

/** What stands on a card: plain letters, or its parts where they are told apart. */
function letters(shape: CardShape, grapheme: string, card: Correspondence | undefined) {
  if (shape === 'cluster') return partsOf(card).map((part) => <span key={part}>{part}</span>);
  if (shape === 'carrier') {
    return (
      <>
        <span>{grapheme.slice(0, -1)}</span>
        <span class="silent">e</span>
      </>
    );
  }
  return grapheme;
}

function partsOf(card: Correspondence | undefined): readonly string[] {
  return (card?.parts ?? []).map(graphemeOf);
}
