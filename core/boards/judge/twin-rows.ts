import type { CardId } from '../../language/card-id.ts';
import { mayShow, type WordTable } from './word-table.ts';

/**
 * Which combinations may be shown and become another that may be shown when a card is turned into its
 * look-alike: *pen* and *pin* of e and i, in whatever pile or in `only` one. 1 for each of them, by the
 * index of the table. O(combinations × pairs).
 */
export function twinRows(
  table: WordTable,
  pairs: readonly (readonly [CardId, CardId])[],
  only?: number,
): Uint8Array {
  const twins = new Uint8Array(table.outcomes.length);
  let stride = table.outcomes.length;
  for (const [at, pile] of table.piles.entries()) {
    const block = stride;
    stride /= pile.length;
    if (only !== undefined && only !== at) continue;
    for (const [one, other] of pairs) {
      const [from, to] = [pile.indexOf(one), pile.indexOf(other)];
      if (from < 0 || to < 0 || from === to) continue;
      for (let start = 0; start < table.outcomes.length; start += block) {
        for (let rest = 0; rest < stride; rest++) {
          const [left, right] = [start + from * stride + rest, start + to * stride + rest];
          if (!mayShow(table, left) || !mayShow(table, right)) continue;
          if (table.words[left] === table.words[right]) continue;
          twins[left] = 1;
          twins[right] = 1;
        }
      }
    }
  }
  return twins;
}
