import type { Lexicon } from '../words/lexicon.ts';

const COMMON_WORDS = 6000;
const counts = new WeakMap<Lexicon, ReadonlyMap<string, number>>();

/** How many of the commonest words have a card in their ordinary reading. Counted once a lexicon. */
export function commonnessIn(lexicon: Lexicon): (id: string) => number {
  let known = counts.get(lexicon);
  if (!known) {
    known = countCards(lexicon);
    counts.set(lexicon, known);
  }
  const found = known;
  return (id) => found.get(id) ?? 0;
}

function countCards(lexicon: Lexicon): ReadonlyMap<string, number> {
  const found = new Map<string, number>();
  for (let index = 0; index < Math.min(lexicon.size, COMMON_WORDS); index++) {
    for (const id of new Set(lexicon.cardIds(index))) found.set(id, (found.get(id) ?? 0) + 1);
  }
  return found;
}
