import type { CardId } from '../../language/card-id.ts';
import { tallyOf } from './card-gain.ts';
import type { RowJudge } from './row-judge.ts';

/** A card of a full pile that could make room for another, and what that does to the number of real words. */
export interface Swap {
  readonly out: CardId;
  /** Real words more, or fewer where it is below 0. */
  readonly words: number;
}

/**
 * The swaps by which a card could come into a full pile, the one that costs fewest real words first, and
 * of equals the card that lies foremost. `held` cards stay.
 */
export function swapsFor(
  judge: RowJudge,
  piles: readonly (readonly CardId[])[],
  pile: number,
  id: CardId,
  held: readonly CardId[] = [],
): readonly Swap[] {
  const lying = piles[pile] ?? [];
  const realWith = (cards: readonly CardId[]): number =>
    tallyOf(judge.table(piles.map((own, at) => (at === pile ? cards : own)))).real;
  const now = realWith(lying);
  return lying
    .filter((out) => !held.includes(out))
    .map((out) => ({
      out,
      words: realWith(lying.map((other) => (other === out ? id : other))) - now,
    }))
    .sort((one, other) => other.words - one.words);
}
