import type { Board } from '../../../core/boards/shapes/board.ts';
import { isTaughtCard } from '../../../core/boards/shapes/taught-cards.ts';
import type { RunSpec } from '../../../core/drills/drill-spec.ts';
import { reshuffleRun } from '../../../core/drills/edit-drill.ts';
import type { CardId } from '../../../core/language/card-id.ts';
import { correspondenceById } from '../../../core/language/correspondences.ts';
import { isSyllableId } from '../../../core/language/syllable-card.ts';
import { parseDay } from '../../../core/learners/day.ts';
import { boardAim, boardContrast } from '../../state/boards.ts';
import { today } from '../../state/day.ts';
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
  const planned = drill.peek();
  if (!planned) return say.forToday.thereIsNoWarm;
  const known = piles.map((pile) => pile.filter((id) => isSyllableId(id) || isTaught(id)));
  const board = { shape, piles: known };
  const made = reshuffleRun({ ...planned, board }, taught.peek(), ready, runAskedOn(board));
  if (made.kind === 'refused') return made.message;
  if (made.drill.run.length === 0) return say.forToday.thisBoardMakesNo;
  setDrill(
    { ...made.drill, seed: freshSeed(), shortfall: null },
    say.forToday.todaysBlendingUses,
    withContrast(wishes.peek(), board),
  );
  return null;
}

/**
 * What is asked of a run over this board, the same all day: what the screen says of the flips is true of
 * the run that today's blending will have.
 */
export function runAskedOn(board: Board): RunSpec & { readonly seed: number } {
  const seed = parseDay(today()) ?? 1;
  return { ...runOf(withContrast(wishes.peek(), board)), aim: boardAim.peek(), seed };
}

/** Her wishes for today, with the look-alikes that this board was laid for, where two of them lie in one pile. */
function withContrast(now: Wishes, { piles }: Board): Wishes {
  const contrast = boardContrast.peek();
  const lies = piles.some((pile) => (contrast ?? []).filter((id) => pile.includes(id)).length > 1);
  return lies ? { ...now, contrast } : now;
}
