import type { Board } from '../../../core/boards/shapes/board.ts';
import { isTaughtCard } from '../../../core/boards/shapes/taught-cards.ts';
import { reshuffleRun } from '../../../core/drills/edit-drill.ts';
import type { CardId } from '../../../core/language/card-id.ts';
import { correspondenceById } from '../../../core/language/correspondences.ts';
import { isSyllableId } from '../../../core/language/syllable-card.ts';
import { boardContrast } from '../../state/boards.ts';
import { readyEngine } from '../../state/engine-ready.ts';
import {
  drill,
  ensureDrill,
  freshSeed,
  runOf,
  setDrill,
  type Wishes,
  wishes,
} from '../../state/plan.ts';
import { taught } from '../../state/progress.ts';
import { say } from './wording.ts';

function isTaught(id: CardId): boolean {
  const card = correspondenceById.get(id);
  return card !== undefined && isTaughtCard(card, taught.peek());
}

/**
 * Makes a board that of today's blending, with a run of its own; cards that were
 * not taught stay out. Says why when it cannot; null when it is done.
 */
export function useForToday(shape: string, piles: readonly (readonly CardId[])[]): string | null {
  const ready = readyEngine();
  if (!ready) return say.forToday.theWordList;
  ensureDrill(freshSeed());
  const today = drill.peek();
  if (!today) return say.forToday.thereIsNoWarm;
  const known = piles.map((pile) => pile.filter((id) => isSyllableId(id) || isTaught(id)));
  const seed = freshSeed();
  const asked = withContrast(wishes.peek(), { shape, piles: known });
  const made = reshuffleRun({ ...today, board: { shape, piles: known } }, taught.peek(), ready, {
    seed,
    ...runOf(asked),
  });
  if (made.kind === 'refused') return made.message;
  if (made.drill.run.length === 0) return say.forToday.thisBoardMakesNo;
  setDrill({ ...made.drill, seed, shortfall: null }, say.forToday.todaysBlendingUses, asked);
  return null;
}

/** Her wishes for today, with the look-alikes that this board was laid for, where two of them lie in one pile. */
export function withContrast(now: Wishes, { piles }: Board): Wishes {
  const contrast = boardContrast.peek();
  const lies = piles.some((pile) => (contrast ?? []).filter((id) => pile.includes(id)).length > 1);
  return lies ? { ...now, contrast } : now;
}
