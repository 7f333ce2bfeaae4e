import { type Passage, stepForShare } from '../../../core/texts/passage.ts';
import { percent } from '../../wording/percent.ts';
import type { ReadingGroup } from './because.ts';
import { Chart } from './chart.tsx';

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
    <section class="verdict" aria-label="How much can be read">
      <p class="share" role="status">
        <b>{percent(share)}</b> can be read:{' '}
        <span class="quiet">
          {decodable.toLocaleString('en-US')} of {words.toLocaleString('en-US')}{' '}
          {words === 1 ? 'word' : 'words'}
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
  if (share >= goal) return `It is ${name} decodable now.`;
  if (step === null) return `No step of the order makes it ${name} decodable.`;
  if (step === 0) return `It is ${name} decodable before the first step.`;
  const title = sequence.steps[step - 1]?.title;
  return `Step ${step}${title ? ` (${title})` : ''} makes it ${name} decodable.`;
}
