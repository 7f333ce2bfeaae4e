import type { CardId } from '../language/card-id.ts';
import { correspondenceById } from '../language/correspondences.ts';
import { likelySlips } from '../language/likely-slips.ts';
import type { Slip } from '../log/event.ts';
import type { Random } from '../random.ts';
import type { SampleChild } from './sample-children.ts';

/** What a child did with a row of cards: nothing broke, or which card (from 1) and what was heard. */
export type SampleReading = { readonly broke: number; readonly heard: Slip | null } | null;

/** After so many school days a card is known: its slips have fallen by two thirds. */
const LEARNED_IN = 9;

/**
 * How an invented child reads cards, of each of which it is given for how many school days it has been
 * taught: by its troubles first, else by chance, the newer the card the likelier. At most one card breaks.
 */
export function readAsChild(
  { slips, troubles }: SampleChild,
  cards: readonly CardId[],
  daysSince: (card: CardId) => number,
  random: Random,
): SampleReading {
  for (const [at, id] of cards.entries()) {
    const card = correspondenceById.get(id);
    for (const trouble of troubles) {
      if (trouble.kind === 'silent-e' || random.fraction() >= trouble.often) continue;
      const second = card?.kind === 'cluster' ? card.parts[1] : undefined;
      if (trouble.kind === 'second-of-cluster' && second !== undefined) {
        return { broke: at + 1, heard: { kind: 'letter', card: second } };
      }
      if (trouble.kind === 'sound' && trouble.on.includes(id)) {
        return { broke: at + 1, heard: { kind: 'phoneme', sound: trouble.says } };
      }
    }
    const { fresh, known } = slips;
    const chance = known + (fresh - known) * Math.exp(-daysSince(id) / LEARNED_IN);
    if (random.fraction() < chance) return { broke: at + 1, heard: heardInstead(id, random) };
  }
  return null;
}

/** One of the likely slips, or nothing said of it, as busy teachers do. */
function heardInstead(id: CardId, random: Random): Slip | null {
  const likely = likelySlips(id, 'blending').slice(0, 3);
  return random.fraction() < 0.3 ? null : (likely[random.below(likely.length)] ?? null);
}
