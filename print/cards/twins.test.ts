import { expect, it } from 'vitest';
import type { CardId } from '../../core/language/card-id.ts';
import { ownCard, paperCard } from './paper-card.ts';
import { withoutTwins } from './twins.ts';

it('keeps one of cards that look alike, and all that differ in letters or shape', () => {
  const ids: readonly CardId[] = ['s=S', 'a=AE', 's=Z', 'a=EY', 'st=S+T', 'ed=T', 'ed=D'];
  const cards = ids.map(paperCard);
  expect(withoutTwins(cards)).toEqual([cards[0], cards[1], cards[4], cards[5]]);
});

it('keeps every blank card', () => {
  expect(withoutTwins([ownCard(''), ownCard('')])).toHaveLength(2);
});
