import { render } from 'preact';
import { openLastClass, store } from '../state/open-class.ts';
import { say } from './wording.ts';

/**
 * Opens the class that was open last. Should what is kept on this device not answer, it says so after a
 * moment, and she chooses: to wait, or to go on in memory.
 */
export async function openOrAsk(root: HTMLElement): Promise<void> {
  const late = setTimeout(
    () => render(<Opening again={null} memory={store.workInMemory} />, root),
    SHOWN_AFTER,
  );
  for (;;) {
    await openLastClass();
    clearTimeout(late);
    if (store.inMemory.peek() || store.trouble.peek()?.code !== 'slow') return;
    await new Promise<void>((goOn) => {
      const again = () => {
        render(<Opening again={null} memory={store.workInMemory} />, root);
        goOn();
      };
      const memory = () => {
        store.workInMemory();
        goOn();
      };
      render(<Opening again={again} memory={memory} />, root);
    });
  }
}

/** In milliseconds; a class opens in well under one second. */
const SHOWN_AFTER = 1500;

interface OpeningProps {
  /** Tries again; null while it is being tried. */
  readonly again: (() => void) | null;
  readonly memory: () => void;
}

function Opening({ again, memory }: OpeningProps) {
  return (
    <main class="broken">
      <h1>{again ? say.opening.yourClassesCannot : say.opening.openingYourClasses}</h1>
      <p role="status">{again ? say.opening.theBrowserDoesNot : say.opening.thisTakesLongerThan}</p>
      <p>
        {again && (
          <button type="button" class="button next" onClick={again}>
            {say.opening.tryAgain}
          </button>
        )}{' '}
        <button type="button" class="button" onClick={memory}>
          {say.opening.startWithoutThem}
        </button>
      </p>
      <p class="quiet small">{say.opening.nothingThatIsSaved}</p>
    </main>
  );
}
