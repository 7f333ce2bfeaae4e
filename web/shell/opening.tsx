import { render } from 'preact';
import { openLastClass, store } from '../state/open-class.ts';

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
    await new Promise<void>((again) => {
      const memory = () => {
        store.workInMemory();
        again();
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
      <h1>{again ? 'Your classes do not answer yet' : 'Opening your classes …'}</h1>
      <p role="status">
        {again
          ? 'The browser has not given out what it keeps for Sweepline. Often another window holds it: close all others and try again.'
          : 'This takes longer than it should. You can wait, or begin without them.'}
      </p>
      <p>
        {again && (
          <button type="button" class="button next" onClick={again}>
            Try again
          </button>
        )}{' '}
        <button type="button" class="button" onClick={memory}>
          Work from memory for now
        </button>
      </p>
      <p class="quiet small">
        Nothing that is kept is touched. What you do from memory can be saved as a file, and joins
        your classes once they answer.
      </p>
    </main>
  );
}
