import './today.css';
import './day.css';
import { useEffect } from 'preact/hooks';
import { drillsOf } from '../../../core/log/recent.ts';
import { today } from '../../state/day.ts';
import { engine, startEngine } from '../../state/engine-ready.ts';
import { classState, group, groupName } from '../../state/open-class.ts';
import { drill, ensureDrill, freshSeed } from '../../state/plan.ts';
import { linkTo } from '../../state/route.ts';
import { groupsInOrder } from '../../state/running-order.ts';
import { letChosenGo } from '../../warm-up/take-up.ts';
import { weekday } from '../../wording/day-name.ts';
import { Auditory } from './auditory.tsx';
import { Blending } from './blending.tsx';
import { DayGroups } from './day-groups.tsx';
import { dayView, looksAhead } from './day-view.ts';
import { Headline } from './headline.tsx';
import { LeftOver } from './left-over.tsx';
import { Start } from './start.tsx';
import { Visual } from './visual.tsx';
import { say } from './wording.ts';

/** Today's warm-up: its three parts on one page, each thing in it hers to change; and how far the day has come. */
export function Today() {
  const ready = engine.value;
  const planned = drill.value;
  const { id } = group.value;
  const { kind, drill: shown } = dayView.value;
  useEffect(() => ensureDrill(freshSeed()), [ready, planned, id]);
  useEffect(letChosenGo, []);
  useEffect(() => {
    looksAhead.value = false;
  }, [id]);
  const hasRail = groupsInOrder(classState.value).length > 1;
  const hasRun = drillsOf(classState.value, id).length > 0;
  return (
    <div class={`today is-${kind}${hasRail ? ' has-rail' : ''}`}>
      <div class="today-head">
        <div>
          <h1>
            {groupName.value}{' '}
            <span class="today-day">
              · {kind === 'tomorrow' ? say.today.nextTime : weekday(today())}
            </span>
          </h1>
          <Headline />
        </div>
        <p class="today-tools">
          {ready === 'failed' && (
            <button type="button" class="button" onClick={startEngine}>
              {say.today.tryAgain}
            </button>
          )}
          {shown && <Start drill={shown} />}
        </p>
      </div>
      {kind === 'fresh' && shown && <LeftOver drill={shown} />}
      {shown?.shortfall && (
        <div class="shortfall" role="note">
          <p>{shown.shortfall.message}</p>
          <a class={shown.run.length === 0 ? 'button next' : 'button'} href={linkTo('learned')}>
            {say.today.whatHaveTheyLearned}
          </a>
        </div>
      )}
      {shown && (
        <div class="parts">
          <Visual drill={shown} />
          <Auditory drill={shown} />
          <Blending drill={shown} />
        </div>
      )}
      <aside class="today-rail" aria-label={say.today.theDay}>
        <DayGroups />
        <p class="today-ways">
          {hasRun && <a href={linkTo('after')}>{say.today.howItWent}</a>}
          {shown && <a href={linkTo('plan')}>{say.today.planForASubstitute}</a>}
          {shown && <a href={linkTo('dictation')}>{say.today.wordsAndSentences}</a>}
        </p>
      </aside>
    </div>
  );
}
