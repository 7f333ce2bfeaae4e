import type { ItemReading, Slip } from '../../../core/log/event.ts';

/** What a tap on an item says: a card that was wrong, or one thing of the whole item. */
export const TOOLS = ['wrong', 'self-corrected', 'hesitated', 'left-out', 'last'] as const;
export type Tool = (typeof TOOLS)[number];

/** What can be said of a whole item. */
export type WholeMark = Exclude<Tool, 'wrong' | 'last'>;

const RIGHT: ItemReading = { outcome: 'right', broke: [] };

/** Whether a card of an item (counted from 1) is marked as wrong. */
export function isBroken(reading: ItemReading | undefined, card: number): boolean {
  return reading?.broke.some((one) => one.card === card) ?? false;
}

/** The item with a card marked as wrong, whatever was said of it before. */
export function withBroken(before: ItemReading | undefined, card: number): ItemReading {
  const others = brokenOf(before).filter((one) => one.card !== card);
  const broke = [...others, { card, heard: null }].sort((one, other) => one.card - other.card);
  return { outcome: 'wrong', broke };
}

/** The item with what was heard instead of a card. */
export function withHeard(
  before: ItemReading | undefined,
  card: number,
  heard: Slip | null,
): ItemReading {
  const { broke } = withBroken(before, card);
  return {
    outcome: 'wrong',
    broke: broke.map((one) => (one.card === card ? { card, heard } : one)),
  };
}

/** The item with a card right after all. */
export function withoutBroken(before: ItemReading | undefined, card: number): ItemReading {
  const broke = brokenOf(before).filter((one) => one.card !== card);
  return broke.length === 0 ? RIGHT : { outcome: 'wrong', broke };
}

/** The item marked as a whole; said twice, it is taken back. */
export function withWhole(before: ItemReading | undefined, mark: WholeMark): ItemReading {
  return before?.outcome === mark ? RIGHT : { outcome: mark, broke: [] };
}

function brokenOf(reading: ItemReading | undefined): ItemReading['broke'] {
  return reading?.outcome === 'wrong' ? reading.broke : [];
}
