import type { CardId } from '../../language/card-id.ts';
import { correspondenceById } from '../../language/correspondences.ts';
import { partsOf } from '../../language/laid-syllable.ts';
import type { Lexicon } from '../../words/lexicon.ts';
import type { Shape } from './shapes.ts';

/** The most combinations that are judged for one board: some seconds. */
const MOST_COMBINATIONS = 200_000;
/** Words among which a card counts as common. */
const COMMON_WORDS = 8000;

/**
 * Leaves out the cards that the fewest common words use, the longest pile
 * first, until all combinations can be judged. Shapes of three piles are seldom
 * touched; two syllables of six piles always are. `pinned` cards stay whatever happens.
 */
export function trimPiles(
  shape: Shape,
  piles: readonly (readonly CardId[])[],
  pinned: readonly string[],
  lexicon: Lexicon,
  most = MOST_COMBINATIONS,
): readonly (readonly CardId[])[] {
  const sizeOf = (): number => ranked.reduce((size, pile) => size * pile.length, 1);
  const commonness = countCards(lexicon);
  const worth = (id: CardId): number =>
    Math.min(
      ...partsOf(correspondenceById.get(id) as never).map((part) => commonness.get(part.id) ?? 0),
    );
  const ranked = piles.map((pile) =>
    [...pile].sort(
      (one, other) =>
        Number(pinned.includes(other)) - Number(pinned.includes(one)) || worth(other) - worth(one),
    ),
  );
  while (sizeOf() > most) {
    const longest = ranked.reduce(
      (best, pile, at) => {
        const own = shape.piles[at]?.role === 'vowel' ? pile.length * 2 : pile.length;
        return own > best.own ? { own, at } : best;
      },
      { own: 0, at: 0 },
    ).at;
    const pile = ranked[longest] as string[];
    if (pinned.includes(pile.at(-1) as string) || pile.length === 1) break;
    pile.pop();
  }
  return piles.map((pile, at) => pile.filter((id) => ranked[at]?.includes(id)));
}

function countCards(lexicon: Lexicon): ReadonlyMap<string, number> {
  const found = new Map<string, number>();
  for (let index = 0; index < Math.min(lexicon.size, COMMON_WORDS); index++) {
    for (const id of lexicon.cardIds(index)) found.set(id, (found.get(id) ?? 0) + 1);
  }
  return found;
}
