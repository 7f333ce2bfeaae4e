import { intoOrder } from './into-order.ts';
import { numberSteps, type Progress } from './progress.ts';
import type { Step } from './sequence.ts';

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

/** Gives the stage at `place`, counted from 0, another name. An empty name, or a place outside, changes nothing. */
export function renameStageOf(progress: Progress, place: number, name: string): Progress {
  const run = stagesOf(progress.sequence.steps)[place];
  return run ? inStage(progress, run.steps, name) : progress;
}

/** Begins a stage with the step of this number: it and those of its stage that follow bear the name from then on. */
export function beginStageAt(progress: Progress, number: number, name: string): Progress {
  const run = stagesOf(progress.sequence.steps).find(({ steps }) =>
    steps.some((step) => step.number === number),
  );
  const rest = run?.steps.filter((step) => step.number >= number) ?? [];
  return inStage(progress, rest, name);
}

function inStage(progress: Progress, some: readonly Step[], name: string): Progress {
  const stage = name.trim();
  if (stage === '' || some.every((step) => step.stage === stage)) return progress;
  const numbers = new Set(some.map(({ number }) => number));
  const steps = progress.sequence.steps.map((step) =>
    numbers.has(step.number) ? { ...step, stage } : step,
  );
  return { ...progress, sequence: { ...progress.sequence, steps } };
}

/** The same steps in another order; nothing becomes taught or untaught by a move. */
function inOrder(progress: Progress, steps: readonly Step[]): Progress {
  const wasTaught = steps.map(({ number }) => number <= progress.upTo);
  return intoOrder(progress, { ...progress.sequence, steps: numberSteps(steps) }, wasTaught);
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
