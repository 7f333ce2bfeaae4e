import { goTo } from '../state/route.ts';

/** What is shown when a screen breaks: that nothing is lost, and the two ways on. */
export function Broken({ error, again }: { readonly error: unknown; readonly again: () => void }) {
  return (
    <main class="broken">
      <h1>Something went wrong</h1>
      <p>What you entered is still on this device. Try the page again, or go back to the start.</p>
      <p>
        <button type="button" class="button next" onClick={again}>
          Try again
        </button>{' '}
        <button
          type="button"
          class="button"
          onClick={() => {
            goTo('learned');
            again();
          }}
        >
          What have they learned?
        </button>
      </p>
      <details>
        <summary>Details for tech support</summary>
        <pre>{error instanceof Error ? (error.stack ?? error.message) : String(error)}</pre>
      </details>
    </main>
  );
}
