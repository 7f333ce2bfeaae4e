import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boards } from '../../../test/run-boards.ts';
import type { CardId } from '../../language/card-id.ts';
import { twinRows } from './twin-rows.ts';
import { cardsAt, mayShow } from './word-table.ts';

const PAIRS: readonly (readonly [CardId, CardId])[] = [
  ['b=B', 'd=D'],
  ['e=EH', 'i=IH'],
];

test('twins are the words that become another word with one card turned, and no others', () => {
  fc.assert(
    fc.property(boards, fc.subarray([...PAIRS]), ({ table }, pairs) => {
      const shown = table.words.flatMap((word, at) =>
        mayShow(table, at) ? [{ at, word, cards: cardsAt(table, at) }] : [],
      );
      const byCards = new Map(shown.map((row) => [row.cards.join(' '), row]));
      const plain = shown.filter(({ cards, word }) =>
        cards.some((id, pile) =>
          pairs.some((pair) => {
            const other = pair[0] === id ? pair[1] : pair[1] === id ? pair[0] : null;
            const twin = byCards.get(cards.map((own, at) => (at === pile ? other : own)).join(' '));
            return other !== null && twin !== undefined && twin.word !== word;
          }),
        ),
      );
      const found = [...twinRows(table, pairs).entries()].filter(([, is]) => is).map(([at]) => at);
      expect(found).toEqual(plain.map(({ at }) => at));
    }),
    { numRuns: 60 },
  );
});
