import type { ChildId } from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import type { Observation } from './observation.ts';

/** How often something was heard for a card. */
export interface Confusion {
  /** Null for what a group read or spelled together. */
  readonly child: ChildId | null;
  readonly card: CardId;
  /** Sounds in ARPABET, or another kind of slip. */
  readonly heard: string;
  readonly count: number;
}

/** What was heard instead of what, most often first; only where it is known which card it was. */
export function countConfusions(observations: readonly Observation[]): readonly Confusion[] {
  const counts = new Map<string, Confusion>();
  for (const { child, cards, right, broke, heard } of observations) {
    const card = broke === null && cards.length > 1 ? undefined : cards[(broke ?? 1) - 1];
    if (right || heard === null || card === undefined) continue;
    const key = JSON.stringify([child, card, heard]);
    const count = (counts.get(key)?.count ?? 0) + 1;
    counts.set(key, { child, card, heard, count });
  }
  return [...counts.values()].sort(
    (one, other) => other.count - one.count || (one.card < other.card ? -1 : 1),
  );
}
