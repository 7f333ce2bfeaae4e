import './card.css';
import { type Correspondence, correspondenceById, isVowelCard } from '../engine.ts';

/** The shape a card has: `arch` for vowels, `tile` for consonants, and so on. */
export type Shape = 'tile' | 'arch' | 'split' | 'cluster' | 'welded' | 'cle' | 'ending' | 'carrier';

/**
 * One card, drawn at the size of the text around it. Letters only: its name for
 * screen readers belongs to the button or list that holds it (`cardName`).
 */
export function Card({ id, class: extra = '' }: { readonly id: string; readonly class?: string }) {
  const card = correspondenceById.get(id);
  const grapheme = card?.grapheme ?? id;
  const shape = shapeOf(card);
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

/** The shape of a card; an unknown one is a plain tile. */
function shapeOf(card: Correspondence | undefined): Shape {
  if (!card) return 'tile';
  if (card.grapheme.includes('_')) return 'split';
  if (isVowelCard(card)) return 'arch';
  if (card.kind === 'cluster') return 'cluster';
  if (card.kind === 'welded') return 'welded';
  if (card.kind === 'consonant-le') return 'cle';
  if (card.kind === 'ending') return 'ending';
  if (card.kind === 'consonant-e') return 'carrier';
  return 'tile';
}

/** What stands on a card: plain letters, or its parts where they are told apart. */
function letters(shape: Shape, grapheme: string, card: Correspondence | undefined) {
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
  return (card?.parts ?? []).map((id) => id.slice(0, id.indexOf('=')));
}
