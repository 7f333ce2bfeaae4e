import { type CardId, graphemeOf } from '../../language/card-id.ts';
import { correspondenceById } from '../../language/correspondences.ts';
import { partsOf } from '../../language/laid-syllable.ts';
import type { Taught } from '../../language/taught.ts';
import { decodableWords } from '../../words/decodable.ts';
import type { Lexicon } from '../../words/lexicon.ts';
import type { Shape } from './shapes.ts';
import { cardsTaught } from './taught-cards.ts';

/** The rarest band whose words are looked at. */
const RAREST = 5;

/**
 * The familiar words that a group can read and that lie in a shape's piles, as
 * card ids from left to right; a faded vowel lies as its short card.
 */
export function wordsInShape(
  shape: Shape,
  taught: Taught,
  lexicon: Lexicon,
): readonly (readonly CardId[])[] {
  const piles = shape.piles.map((pile) =>
    cardsTaught(taught)
      .filter(pile.takes)
      .map((card) => ({ id: card.id, parts: partsOf(card).map(({ id }) => id) })),
  );
  const found: (readonly CardId[])[] = [];
  for (const index of decodableWords(lexicon, taught)) {
    if (lexicon.band(index) > RAREST) break;
    const laid = layIn(piles, lexicon.cardIds(index).map(asLaid), 0, 0);
    if (laid) found.push(laid);
  }
  return found;
}

interface PileCard {
  readonly id: CardId;
  readonly parts: readonly string[];
}

/** Cards of piles `pile` and on that carry the parts from `at` to the end; null when none do. */
function layIn(
  piles: readonly (readonly PileCard[])[],
  parts: readonly (readonly string[])[],
  pile: number,
  at: number,
): readonly CardId[] | null {
  if (pile === piles.length) return at === parts.length ? [] : null;
  for (const card of piles[pile] ?? []) {
    if (!card.parts.every((part, place) => parts[at + place]?.includes(part))) continue;
    const rest = layIn(piles, parts, pile + 1, at + card.parts.length);
    if (rest) return [card.id, ...rest];
  }
  return null;
}

/** What a card of a reading may lie as. */
function asLaid(id: CardId): readonly CardId[] {
  const short = SHORT[graphemeOf(id)];
  return id.endsWith('=AX') && short && correspondenceById.has(short) ? [id, short] : [id];
}

const SHORT: Readonly<Record<string, CardId>> = {
  a: 'a=AE',
  e: 'e=EH',
  i: 'i=IH',
  o: 'o=AA',
  u: 'u=AH',
};
