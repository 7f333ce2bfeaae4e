import { goTo } from '../state/route.ts';
import { say } from './wording.ts';

/** What is shown when a screen breaks: that nothing is lost, and the two ways on. */
export function Broken({ error, again }: { readonly error: unknown; readonly again: () => void }) {
  return (
    <main class="broken">
      <h1>{say.broken.somethingWentWrong}</h1>
      <p>{say.broken.whatYouEntered}</p>
      <p>
        <button type="button" class="button next" onClick={again}>
          {say.broken.tryAgain}
        </button>{' '}
        <button
          type="button"
          class="button"
          onClick={() => {
            goTo('learned');
            again();
          }}
        >
          {say.broken.whatHaveTheyLearned}
        </button>
      </p>
      <details>
        <summary>{say.broken.detailsForTechSupport}</summary>
        <pre>{error instanceof Error ? (error.stack ?? error.message) : String(error)}</pre>
      </details>
    </main>
  );
}
