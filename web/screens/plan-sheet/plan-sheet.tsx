import './plan-sheet.css';
import { useEffect } from 'preact/hooks';
import type { Drill } from '../../../core/drills/drill.ts';
import { rareMeanings } from '../../../core/words/meanings.ts';
import { FileButton } from '../../controls/file-button.tsx';
import { today } from '../../state/day.ts';
import { loadMeanings } from '../../state/engine.ts';
import { engine } from '../../state/engine-ready.ts';
import { drill, ensureDrill, freshSeed } from '../../state/plan.ts';
import { taught } from '../../state/progress.ts';
import { linkTo } from '../../state/route.ts';
import { dayName } from '../../wording/day-name.ts';
import { forWhom } from '../../wording/for-whom.ts';
import { Blend } from './blend.tsx';
import { SayCards } from './say-cards.tsx';
import { SaySounds } from './say-sounds.tsx';

/** Today's warm-up for someone else to run: all they need, on one or two sheets. */
export function PlanPage() {
  const ready = engine.value;
  const now = drill.value;
  useEffect(() => ensureDrill(freshSeed()), [ready, now]);
  return (
    <>
      <div class="plan-head not-printed">
        <div>
          <h1>Plan for a substitute</h1>
          <p class="quiet">Today’s warm-up, for someone else to run.</p>
        </div>
        <p class="buttons">
          <a class="button" href={linkTo('today')}>
            Back
          </a>
          {now && ready && ready !== 'failed' && now.run.length > 0 && (
            <FileButton
              name="Slides"
              make={async () => {
                const known = await loadMeanings().catch(() => ({ meaningOf: () => null }));
                const meaningOf = rareMeanings(known, ready.lexicon);
                return (await files()).slidesFile({ drill: now, meaningOf });
              }}
            />
          )}
          {now && (
            <FileButton
              name="Plan on paper"
              class="button next"
              make={async () =>
                (await files()).sheetFile('plan', {
                  drill: now,
                  taught: taught.value,
                  whom: forWhom(),
                  day: dayName(today(), today()),
                })
              }
            />
          )}
        </p>
      </div>
      {now ? <Sheet drill={now} /> : <p class="quiet">{waiting(ready)}</p>}
    </>
  );
}

function Sheet({ drill }: { readonly drill: Drill }) {
  const { visual, auditory, run } = drill;
  if (visual.length + auditory.length + run.length === 0) {
    return (
      <p>
        There is nothing to run yet. <a href={linkTo('learned')}>Say what they have learned</a>, and
        the plan is made of it.
      </p>
    );
  }
  return (
    <article class="plan">
      <header>
        <h2>Warm-up for {forWhom()}</h2>
        <p>
          {dayName(today(), today())}. Up to ten minutes, quick and friendly. All of it was taught:
          leave out what you like, add nothing.
        </p>
        <p class="only-printed">
          Check the box where something broke, and write beside it what you heard.
        </p>
      </header>
      {visual.length > 0 && <SayCards ids={visual} />}
      {auditory.length > 0 && <SaySounds sounds={auditory} />}
      {run.length > 0 && <Blend drill={drill} />}
      <Correct />
      <section class="only-printed for-her">
        <h3>For their teacher: what broke, what you heard, who needs more</h3>
        <div class="write" />
        <div class="write" />
        <div class="write" />
      </section>
    </article>
  );
}

/** How a wrong answer is put right, at once. */
function Correct() {
  return (
    <section class="correct">
      <h3>When something breaks, stop and put it right at once</h3>
      <dl>
        <div>
          <dt>My turn</dt>
          <dd>You say it alone: touch each card, say its sound, sweep, read.</dd>
        </div>
        <div>
          <dt>Our turn</dt>
          <dd>You and the children say it together, in the same way.</dd>
        </div>
        <div>
          <dt>Your turn</dt>
          <dd>The children say it alone. Go on, and come back to it four words later.</dd>
        </div>
      </dl>
    </section>
  );
}

/** What makes files is fetched when the first is asked for. */
const files = () => import('../../state/paper/paper-file.ts');

function waiting(ready: typeof engine.value): string {
  return ready === 'failed'
    ? 'The word list did not arrive. Once it has been loaded, everything works without a network.'
    : 'Fetching the word list …';
}
