import type { Step } from '../../../core/sequence/sequence.ts';
import { say } from './wording.ts';

/** The steps of one stage, in order. A stage that is met again later is a stage of its own. */
export interface StageOfSteps {
  readonly name: string;
  readonly grades: string;
  readonly steps: readonly Step[];
}

/** Cuts an order into its stages. */
export function stagesOf(steps: readonly Step[]): readonly StageOfSteps[] {
  const stages: { name: string; steps: Step[] }[] = [];
  for (const step of steps) {
    const last = stages.at(-1);
    if (last?.name === step.stage) last.steps.push(step);
    else stages.push({ name: step.stage, steps: [step] });
  }
  return stages.map((stage) => ({ ...stage, grades: gradesOf(stage.steps) }));
}

/** `Kindergarten`, `Grade 1`, or `Grades 1 to 2`. */
function gradesOf(steps: readonly Step[]): string {
  const first = steps[0]?.grade ?? '';
  const last = steps.at(-1)?.grade ?? '';
  if (first === last) return first === 'K' ? say.stages.kindergarten : say.stages.grade(first);
  return first === 'K' ? say.stages.kindergartenToGrade(last) : say.stages.gradesTo(first, last);
}
