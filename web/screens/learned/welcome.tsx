import './welcome.css';
import { LookAround } from '../../controls/look-around.tsx';
import { beginFirstRun, isFirstRun } from '../../state/first-run.ts';
import { isLookedAt } from '../../state/open-class.ts';
import { linkTo } from '../../state/route.ts';
import { say } from './wording.ts';

/** What a newcomer sees first: what this is, and the two ways in. */
export function Welcome() {
  if (isLookedAt.value || isFirstRun.value) return null;
  return (
    <section class="welcome" aria-labelledby="welcome-title">
      <h2 id="welcome-title">{say.welcome.aDailyReadingWarm}</h2>
      <p class="quiet">{say.welcome.showACardHear}</p>
      <div class="welcome-ways">
        <p class="welcome-way">
          <button type="button" class="button next" onClick={beginFirstRun}>
            {say.welcome.startWithMyClass}
          </button>
          <span class="quiet small">{say.welcome.aboutTwoMinutesNo}</span>
        </p>
        <LookAround />
      </div>
      <p class="welcome-else small">
        <a href={linkTo('class')}>{say.welcome.bringInASaved}</a>{' '}
        <a href={linkTo('join')}>{say.welcome.joinAClass}</a>
      </p>
    </section>
  );
}
