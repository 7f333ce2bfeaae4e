import { type BoardModel, type BoardPlace, boardValue } from './board-model.ts';
import type { CardNumbers } from './card-numbers.ts';
import { FREE, IN } from './pairs.ts';

type PlaceGroup = readonly BoardPlace[];

/**
 * Finds a place for one card of each group beside the pins, with no forbidden
 * combination and no pile too full. Null when there is none. Depth first.
 */
export function placeGroups(model: BoardModel): readonly (readonly number[])[] | null {
  return place(0, model.pinned);

  function place(
    next: number,
    piles: readonly (readonly number[])[],
  ): readonly (readonly number[])[] | null {
    const group = model.pinGroups?.[next];
    if (!group) return piles;
    if (isServed(group, piles)) return place(next + 1, piles);
    for (const [pile, card] of group) {
      const laid = piles.map((cards, at) => (at === pile ? [...cards, card] : cards));
      if ((laid[pile] as readonly number[]).length > (model.limits[pile] as number)) continue;
      if (boardValue(model, laid) < 0) continue;
      const placed = place(next + 1, laid);
      if (placed) return placed;
    }
    return null;
  }
}

/** Whether a card of the group lies in these piles. */
export function isServed(group: PlaceGroup, piles: readonly (readonly number[])[]): boolean {
  return group.some(([pile, card]) => piles[pile]?.includes(card));
}

/** Puts in the last card that can still serve a group, in place; false when a group has none left. */
export function settleGroups(
  { starts }: CardNumbers,
  status: Uint8Array,
  groups: readonly PlaceGroup[],
): boolean {
  for (const group of groups) {
    const open: number[] = [];
    let served = false;
    for (const [pile, card] of group) {
      const number = (starts[pile] as number) + card;
      if (status[number] === IN) served = true;
      else if (status[number] === FREE) open.push(number);
    }
    if (served) continue;
    if (open.length === 0) return false;
    if (open.length === 1) status[open[0] as number] = IN;
  }
  return true;
}

/** The number of a free card of a group that none serves yet; -1 when all are served. */
export function openGroupCard(
  { starts }: CardNumbers,
  status: Uint8Array,
  groups: readonly PlaceGroup[],
): number {
  for (const group of groups) {
    const numbers = group.map(([pile, card]) => (starts[pile] as number) + card);
    if (numbers.some((number) => status[number] === IN)) continue;
    const open = numbers.find((number) => status[number] === FREE);
    if (open !== undefined) return open;
  }
  return -1;
}
