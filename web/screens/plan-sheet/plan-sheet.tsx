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
import { say } from './wording.ts';

/** Today's warm-up for someone else to run: all they need, on one or two sheets. */
export function PlanPage() {
  const ready = engine.value;
  const now = drill.value;
  useEffect(() => ensureDrill(freshSeed()), [ready, now]);
  return (
    <>
      <div class="plan-head not-printed">
        <div>
          <h1>{say.planSheet.planForASubstitute}</h1>
          <p class="quiet">{say.planSheet.todaysWarmUp}</p>
        </div>
        <p class="buttons">
          <a class="button" href={linkTo('today')}>
            {say.planSheet.back}
          </a>
          {now && ready && ready !== 'failed' && now.run.length > 0 && (
            <FileButton
              name={say.planSheet.slides}
              make={async () => {
                const known = await loadMeanings().catch(() => ({ meaningOf: () => null }));
                const meaningOf = rareMeanings(known, ready.lexicon);
                return (await files()).slidesFile({ drill: now, meaningOf });
              }}
            />
          )}
          {now && (
            <FileButton
              name={say.planSheet.planOnPaper}
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
        {say.planSheet.thereIsNothing(
          <a href={linkTo('learned')}>{say.planSheet.sayWhatTheyHave}</a>,
        )}
      </p>
    );
  }
  return (
    <article class="plan">
      <header>
        <h2>{say.planSheet.warmUpFor(forWhom())}</h2>
        <p>{say.planSheet.upToTenMinutes(dayName(today(), today()))}</p>
        <p class="only-printed">{say.planSheet.checkTheBoxWhere}</p>
      </header>
      {visual.length > 0 && <SayCards ids={visual} />}
      {auditory.length > 0 && <SaySounds sounds={auditory} />}
      {run.length > 0 && <Blend drill={drill} />}
      <Correct />
      <section class="only-printed for-her">
        <h3>{say.planSheet.forTheirTeacherWhat}</h3>
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
      <h3>{say.planSheet.whenSomethingBreaksStop}</h3>
      <dl>
        <div>
          <dt>{say.planSheet.myTurn}</dt>
          <dd>{say.planSheet.youSayItAlone}</dd>
        </div>
        <div>
          <dt>{say.planSheet.ourTurn}</dt>
          <dd>{say.planSheet.youAndTheChildren}</dd>
        </div>
        <div>
          <dt>{say.planSheet.yourTurn}</dt>
          <dd>{say.planSheet.theChildrenSay}</dd>
        </div>
      </dl>
    </section>
  );
}

/** What makes files is fetched when the first is asked for. */
const files = () => import('../../state/paper/paper-file.ts');

function waiting(ready: typeof engine.value): string {
  return ready === 'failed' ? say.planSheet.theWordListDid : say.planSheet.fetchingTheWordList;
}
