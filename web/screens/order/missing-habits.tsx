import { assumedHabits, withHabits } from '../../../core/sequence/plain/assumed-habits.ts';
import {
  type OfferedEnding,
  offeredEndings,
} from '../../../core/sequence/plain/offered-endings.ts';
import type { Sequence } from '../../../core/sequence/sequence.ts';
import { hasOwnOrder, progress } from '../../state/progress.ts';
import { rearrange } from './rearrange.ts';
import { say } from './wording.ts';

/** What her order never names and a class cannot do without: when it reads clusters and longer words. */
export function MissingHabits() {
  const now = progress.value;
  const missing = hasOwnOrder.value ? assumedHabits(now.sequence.steps) : [];
  const endings = hasOwnOrder.value ? offeredEndings(now.sequence.steps) : [];
  if (missing.length + endings.length === 0) return null;
  return (
    <section class="missing-habits">
      <p>{say.missingHabits.suchWordsUntil(<b>{say.missingHabits.yourOrderNeverSays}</b>)}</p>
      <ul>
        {missing.map((each) => {
          const step = now.sequence.steps[each.step - 1];
          return (
            <li key={each.habit}>
              {say.missingHabits.fromStepOn(<i>{each.example}</i>, each.step, step?.title)}{' '}
              <button
                type="button"
                class="button"
                onClick={() =>
                  rearrange(
                    {
                      ...now,
                      sequence: { ...now.sequence, steps: withHabits(now.sequence.steps, [each]) },
                    },
                    say.missingHabits.wordsSuchAsCome(each.example, each.step),
                  )
                }
              >
                {say.missingHabits.yesWordsSuchAs(each.example)}
              </button>
            </li>
          );
        })}
        {endings.map((each) => (
          <li key={each.rule}>
            {say.missingHabits.fromStepOnWords(
              <b>{each.rule}</b>,
              <i>{each.example}</i>,
              each.step,
              now.sequence.steps[each.step - 1]?.title,
              each.besides,
            )}{' '}
            <button
              type="button"
              class="button"
              onClick={() =>
                rearrange(
                  { ...now, sequence: withEnding(now.sequence, each) },
                  say.missingHabits.wordsSuchAsCome(each.example, each.step),
                )
              }
            >
              {say.missingHabits.yes(each.rule)}
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
