import type { CardReading } from '../../../core/language/reading.ts';

/** A card of a word, or one half of a split card, where its letter stands. */
export interface WordPiece {
  readonly card: CardReading;
  readonly part: 'whole' | 'vowel' | 'silent-e';
}

/** The cards of a word in the order of its letters; a split card's silent e stands where it is written. */
export function piecesOfReading(cards: readonly CardReading[]): readonly WordPiece[] {
  return cards
    .flatMap(piecesOfCard)
    .sort((left, right) => left.at - right.at)
    .map(({ card, part }) => ({ card, part }));
}

function piecesOfCard(card: CardReading): readonly (WordPiece & { readonly at: number })[] {
  const [first = 0, second = 0] = card.letters;
  if (!card.grapheme.includes('_')) return [{ card, part: 'whole', at: first }];
  return [
    { card, part: 'vowel', at: first },
    { card, part: 'silent-e', at: second },
  ];
}
