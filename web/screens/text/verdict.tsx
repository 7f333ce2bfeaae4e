import { type Passage, stepForShare } from '../../../core/texts/passage.ts';
import { percent } from '../../wording/percent.ts';
import type { ReadingGroup } from './because.ts';
import { Chart } from './chart.tsx';
import { say } from './wording.ts';

const goalShares = [0.95, 0.98] as const;

interface VerdictProps {
  readonly passage: Passage;
  readonly standing: ReadingGroup;
}

/** How much of the text can be read, and which steps would make it decodable. */
export function Verdict({ passage, standing }: VerdictProps) {
  const { words, decodable, share, shareByStep } = passage;
  const goals = goalShares.map((goal) => ({ share: goal, step: stepForShare(passage, goal) }));
  return (
    <section class="verdict" aria-label={say.verdict.howMuchCan}>
      <p class="share" role="status">
        {say.verdict.canBeRead(<b>{percent(share)}</b>)}{' '}
        <span class="quiet">
          {say.verdict.of(
            decodable.toLocaleString('en-US'),
            words.toLocaleString('en-US'),
            words === 1 ? say.verdict.word : say.verdict.words,
          )}
        </span>
      </p>
      <ul class="goals">
        {goals.map(({ share: goal, step }) => (
          <li key={goal} class="goal">
            {goalSaid(goal, share, step, standing)}
          </li>
        ))}
      </ul>
      <Chart shares={shareByStep} upTo={standing.upTo} goals={goals} />
    </section>
  );
}

function goalSaid(
  goal: number,
  share: number,
  step: number | null,
  { sequence }: ReadingGroup,
): string {
  const name = percent(goal);
  if (share >= goal) return say.verdict.itIsDecodableNow(name);
  if (step === null) return say.verdict.noStep(name);
  if (step === 0) return say.verdict.itIsDecodableBefore(name);
  const title = sequence.steps[step - 1]?.title;
  return say.verdict.stepMakesItDecodable(step, title ? ` (${title})` : '', name);
}
