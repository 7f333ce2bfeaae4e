import './welcome.css';
import { LookAround } from '../../controls/look-around.tsx';
import { beginFirstRun, isFirstRun } from '../../state/first-run.ts';
import { isLookedAt } from '../../state/open-class.ts';
import { linkTo } from '../../state/route.ts';

/** What a newcomer sees first: what this is, and the two ways in. */
export function Welcome() {
  if (isLookedAt.value || isFirstRun.value) return null;
  return (
    <section class="welcome" aria-labelledby="welcome-title">
      <h2 id="welcome-title">A daily reading warm-up, made of what you have taught</h2>
      <p class="quiet">
        Show a card, hear a sound, blend a word: about ten minutes, and nothing your class has not
        learned.
      </p>
      <div class="welcome-ways">
        <p class="welcome-way">
          <button type="button" class="button next" onClick={beginFirstRun}>
            Start with my class
          </button>
          <span class="quiet small">About two minutes. No names needed, no account.</span>
        </p>
        <LookAround />
      </div>
      <p class="welcome-else small">
        <a href={linkTo('class')}>Bring in a saved copy</a>{' '}
        <a href={linkTo('join')}>Join a class</a>
      </p>
    </section>
  );
}
