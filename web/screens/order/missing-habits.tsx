import { assumedHabits, withHabits } from '../../../core/sequence/plain/assumed-habits.ts';
import {
  type OfferedEnding,
  offeredEndings,
} from '../../../core/sequence/plain/offered-endings.ts';
import type { Sequence } from '../../../core/sequence/sequence.ts';
import { hasOwnOrder, progress } from '../../state/progress.ts';
import { rearrange } from './rearrange.ts';

/** What her order never names and a class cannot do without: when it reads clusters and longer words. */
export function MissingHabits() {
  const now = progress.value;
  const missing = hasOwnOrder.value ? assumedHabits(now.sequence.steps) : [];
  const endings = hasOwnOrder.value ? offeredEndings(now.sequence.steps) : [];
  if (missing.length + endings.length === 0) return null;
  return (
    <section class="missing-habits">
      <p>
        <b>Your order never says when your class begins to read</b> such words. Until it does, they
        stay out of every warm-up.
      </p>
      <ul>
        {missing.map((each) => {
          const step = now.sequence.steps[each.step - 1];
          return (
            <li key={each.habit}>
              <i>{each.example}</i>, from step {each.step} on ({step?.title})?{' '}
              <button
                type="button"
                class="button"
                onClick={() =>
                  rearrange(
                    {
                      ...now,
                      sequence: { ...now.sequence, steps: withHabits(now.sequence.steps, [each]) },
                    },
                    `Words such as ${each.example} come with step ${each.step}.`,
                  )
                }
              >
                Yes, words such as {each.example}
              </button>
            </li>
          );
        })}
        {endings.map((each) => (
          <li key={each.rule}>
            <b>{each.rule}</b>: <i>{each.example}</i>, from step {each.step} on (
            {now.sequence.steps[each.step - 1]?.title})? Words such as {each.besides} open too.{' '}
            <button
              type="button"
              class="button"
              onClick={() =>
                rearrange(
                  { ...now, sequence: withEnding(now.sequence, each) },
                  `Words such as ${each.example} come with step ${each.step}.`,
                )
              }
            >
              Yes, {each.rule}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

function withEnding(sequence: Sequence, { step: at, items }: OfferedEnding): Sequence {
  const steps = sequence.steps.map((step) =>
    step.number === at ? { ...step, items: [...step.items, ...items] } : step,
  );
  return { ...sequence, steps };
}
