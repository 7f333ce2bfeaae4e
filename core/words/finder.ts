/**
 * Finding words: by what was taught, shape, a card in a position, number of
 * syllables, and in pairs that differ in one card. Answers are indexes into the
 * word list, commonest first.
 */
import type { CardId } from '../language/card-id.ts';
import type { Place } from '../language/correspondence.ts';
import type { Taught } from '../language/taught.ts';
import { decodableWords } from './decodable.ts';
import type { Lexicon } from './lexicon.ts';
import { shapeOf } from './word-shape.ts';

/** What is looked for; a field left out does not narrow. */
export interface WordQuery {
  /** Only words readable with this; without it, every word. */
  readonly taught?: Taught;
  readonly shape?: string;
  readonly card?: { readonly id: CardId; readonly place: Place | 'anywhere' };
  readonly syllables?: number;
  /** Whether words with an irregular part, and those known by heart and their forms, come too. False without it. */
  readonly irregular?: boolean;
}

/** Indexes of the words that fit. A pass over the list, about 5 ms. */
export function findWords(lexicon: Lexicon, query: WordQuery): readonly number[] {
  const { taught } = query;
  // What is read by heart alone, its forms among it (doing, friends), is no word read by its cards.
  const known = taught && !query.irregular ? { ...taught, irregularWords: NONE } : taught;
  const pool = known ? decodableWords(lexicon, known) : everyIndex(lexicon);
  return pool.filter((index) => {
    if (!query.irregular && !lexicon.isRegular(index)) return false;
    if (query.syllables !== undefined && lexicon.syllableCount(index) !== query.syllables) {
      return false;
    }
    const ids = lexicon.cardIds(index);
    if (query.card && !holds(ids, query.card.id, query.card.place)) return false;
    return query.shape === undefined || shapeOf(ids) === query.shape;
  });
}

/**
 * Pairs among `pool` that differ in one card, `left` in the one and `right` in
 * the other at the same place: pin/pen for i=IH and e=EH. Ordered by the rarer
 * word of the pair, commonest pairs first.
 */
export function minimalPairs(
  lexicon: Lexicon,
  pool: readonly number[],
  left: CardId,
  right: CardId,
): readonly (readonly [number, number])[] {
  const byCards = new Map<string, number>();
  for (const index of pool) {
    const key = lexicon.cardIds(index).join(' ');
    if (!byCards.has(key)) byCards.set(key, index);
  }
  const pairs: [number, number][] = [];
  for (const index of pool) {
    const ids = lexicon.cardIds(index);
    for (let at = 0; at < ids.length; at++) {
      if (ids[at] !== left) continue;
      const other = byCards.get([...ids.slice(0, at), right, ...ids.slice(at + 1)].join(' '));
      if (other !== undefined) pairs.push([index, other]);
    }
  }
  return pairs.sort((a, b) => Math.max(...a) - Math.max(...b));
}

const NONE: ReadonlySet<string> = new Set();

function holds(ids: readonly CardId[], id: CardId, place: Place | 'anywhere'): boolean {
  const last = ids.length - 1;
  return ids.some((found, at) => {
    if (found !== id) return false;
    if (place === 'beginning') return at === 0;
    if (place === 'ending') return at === last;
    return place === 'anywhere' || (at > 0 && at < last);
  });
}

function everyIndex(lexicon: Lexicon): number[] {
  return Array.from({ length: lexicon.size }, (_, index) => index);
}
