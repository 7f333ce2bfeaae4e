import type { ChildId, GroupId } from '../../ids.ts';
import { type Book, GROUP_LAST, type Reader } from './book.ts';
import { LAST } from './pair.ts';
import { lastThere } from './there.ts';

type Whose =
  | { readonly of: 'child'; readonly id: ChildId }
  | { readonly of: 'group'; readonly id: GroupId };

/** The last day on which a child or group had a card, alone or together; null when never. */
export function lastHad(book: Book, { of, id }: Whose, card: string): number | null {
  const number = book.cardNumber.get(card) ?? -1;
  let last = Number.NEGATIVE_INFINITY;
  if (of === 'child') {
    const child = book.children.get(id);
    if (child === undefined) return null;
    const row = child.home.rows.at(number);
    last = lastAlone(book, child, number);
    if (row >= 0) last = Math.max(last, lastThere(book, child.pairs.at(number), row));
  } else {
    last = lastTogether(book, id, number);
    for (const child of book.children.values()) {
      if (child.groups.includes(id)) last = Math.max(last, lastAlone(book, child, number));
    }
  }
  return Number.isFinite(last) ? last : null;
}

function lastAlone(book: Book, child: Reader, card: number): number {
  const pair = child.pairs.at(card);
  return pair < 0 ? Number.NEGATIVE_INFINITY : (book.pairs.numbers[pair + LAST] as number);
}

function lastTogether(book: Book, group: GroupId, card: number): number {
  const row = book.groups.get(group)?.rows.at(card) ?? -1;
  return row < 0 ? Number.NEGATIVE_INFINITY : (book.together.numbers[row + GROUP_LAST] as number);
}
