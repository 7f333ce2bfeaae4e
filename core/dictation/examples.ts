import { itemKey } from '../sequence/item.ts';
import type { Item } from '../sequence/sequence.ts';
import type { Lexicon } from '../words/lexicon.ts';
import { needsOf } from '../words/needs.ts';
import { holdsCard } from './needs.ts';

/**
 * Indexes of the words that show an item, commonest first, down to `RAREST`;
 * whether they are decodable is not asked. One pass over the word list for each
 * item, at its first question; kept as long as the list is.
 */
export function examplesOf(item: Item, lexicon: Lexicon): ReadonlySet<number> {
  let known = examples.get(lexicon);
  if (!known) {
    known = new Map();
    examples.set(lexicon, known);
  }
  const key = itemKey(item);
  let found = known.get(key);
  if (!found) {
    found = find(item, lexicon);
    known.set(key, found);
  }
  return found;
}

/** The rarest band of the word list that a dictation takes words from. */
const RAREST = 6;

const examples = new WeakMap<Lexicon, Map<string, ReadonlySet<number>>>();

function find(item: Item, lexicon: Lexicon): ReadonlySet<number> {
  if (item.kind === 'word') {
    const index = lexicon.indexOf(item.word);
    return new Set(index < 0 ? [] : [index]);
  }
  const found = new Set<number>();
  for (let index = 0; index < lexicon.size; index++) {
    if (lexicon.band(index) > RAREST) break;
    const cardIds = lexicon.cardIds(index);
    const isExample =
      item.kind === 'card'
        ? holdsCard(cardIds, item.id)
        : needsOf(cardIds, lexicon.syllableCount(index)).habits.includes(item.habit);
    if (isExample) found.add(index);
  }
  return found;
}
