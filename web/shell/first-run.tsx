import './first-run.css';
import { useEffect } from 'preact/hooks';
import { endFirstRun, isFirstRun } from '../state/first-run.ts';
import { linkTo } from '../state/route.ts';
import type { Screen } from '../state/screens.ts';
import { latest } from '../state/undo.ts';
import { FIRST_RUN, type FirstRunStep } from '../wording/first-run.ts';
import { say } from './wording.ts';

/** Leads a newcomer in three steps to her first warm-up with her own class: one line above each screen of the way. */
export function FirstRun({ screen }: { readonly screen: Screen }) {
  const on = isFirstRun.value;
  useEffect(() => {
    if (screen === 'stage' || screen === 'desk') endFirstRun();
  }, [screen]);
  useEffect(() => {
    // What she did on the way here is done; the bar would cover the plan that she sees for the first time.
    if (isFirstRun.peek()) latest.value = null;
  }, [screen]);
  const step: FirstRunStep | undefined = FIRST_RUN[screen];
  if (!on || !step) return null;
  return (
    <section class="first-run" aria-label={say.firstRun.yourFirstWarmUp}>
      <p>
        <b>{say.firstRun.stepOf3(step.number)}</b> {step.says}
      </p>
      {step.aside && (
        <a class="button first-run-aside" href={linkTo(step.aside.to)}>
          {step.aside.name}
        </a>
      )}
      <button type="button" class="button plain" onClick={endFirstRun}>
        {say.firstRun.illFindMyWay}
      </button>
    </section>
  );
}
