import type { Taught } from '../language/taught.ts';
import { itemKey } from './item.ts';
import { numberSteps, type Progress, taughtOf } from './progress.ts';
import type { Item, Step } from './sequence.ts';

/** Moves the step numbered `from` to stand as number `to`. What was taught stays as it is. Numbers outside the order change nothing. */
export function moveStepOf(progress: Progress, from: number, to: number): Progress {
  const { steps } = progress.sequence;
  if (!isNumberOf(steps, from) || !isNumberOf(steps, to) || from === to) return progress;
  return inOrder(progress, moved(steps, from - 1, to - 1));
}

/** A run of steps in one stage. */
export interface StageRun {
  readonly stage: string;
  readonly steps: readonly Step[];
}

/** The stages of an order, each a run of its steps; one that comes back later is a run of its own. */
export function stagesOf(steps: readonly Step[]): readonly StageRun[] {
  const runs: { stage: string; steps: Step[] }[] = [];
  for (const step of steps) {
    const last = runs.at(-1);
    if (last?.stage === step.stage) last.steps.push(step);
    else runs.push({ stage: step.stage, steps: [step] });
  }
  return runs;
}

/** Moves the stage at place `from` to place `to`, both counted from 0. What was taught stays as it is. */
export function moveStageOf(progress: Progress, from: number, to: number): Progress {
  const runs = stagesOf(progress.sequence.steps);
  const inside = (place: number) => Number.isInteger(place) && place >= 0 && place < runs.length;
  if (!inside(from) || !inside(to) || from === to) return progress;
  return inOrder(
    progress,
    moved(runs, from, to).flatMap(({ steps }) => steps),
  );
}

/**
 * The same steps in another order. The line goes where the fewest steps lie on
 * its wrong side; what was taught beyond it is added singly and what was not
 * before it is dropped, so that nothing becomes taught or untaught by a move.
 */
function inOrder(progress: Progress, steps: readonly Step[]): Progress {
  const taught = taughtOf(progress);
  const numbered = numberSteps(steps);
  const wasTaught = steps.map(({ number }) => number <= progress.upTo);
  const upTo = bestLine(wasTaught);
  const before = numbered.slice(0, upTo).flatMap(({ items }) => items);
  const reached = new Set(before.map(itemKey));
  const known = [
    ...progress.sequence.steps.slice(0, progress.upTo).flatMap(({ items }) => items),
    ...progress.added,
  ].filter((item) => isTaught(item, taught));
  return {
    sequence: { ...progress.sequence, steps: numbered },
    upTo,
    added: unique(known.filter((item) => !reached.has(itemKey(item)))),
    dropped: unique([...progress.dropped, ...before.filter((item) => !isTaught(item, taught))]),
  };
}

/** How many steps stand before the line that has the fewest untaught before and taught after it. */
function bestLine(wasTaught: readonly boolean[]): number {
  let wrong = wasTaught.filter(Boolean).length;
  let best = 0;
  let fewest = wrong;
  wasTaught.forEach((taught, place) => {
    wrong += taught ? -1 : 1;
    if (wrong < fewest || (wrong === fewest && taught)) {
      fewest = wrong;
      best = place + 1;
    }
  });
  return best;
}

function isTaught(item: Item, taught: Taught): boolean {
  if (item.kind === 'card') return taught.correspondences.has(item.id);
  return item.kind === 'habit'
    ? taught.habits.has(item.habit)
    : taught.irregularWords.has(item.word);
}

function unique(items: readonly Item[]): readonly Item[] {
  return [...new Map(items.map((item) => [itemKey(item), item])).values()];
}

function isNumberOf(steps: readonly Step[], number: number): boolean {
  return Number.isInteger(number) && number >= 1 && number <= steps.length;
}

function moved<Part>(parts: readonly Part[], from: number, to: number): Part[] {
  const left = [...parts];
  const taken = left.splice(from, 1);
  left.splice(to, 0, ...taken);
  return left;
}
