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
      <h1>{again ? 'Your classes cannot be reached yet' : 'Opening your classes …'}</h1>
      <p role="status">
        {again
          ? 'The browser does not let Sweepline read what it has saved. Often another Sweepline window is busy with it: close the others and try again. If that does not help, close the browser and open it again.'
          : 'This takes longer than it should. You can wait, or start without them.'}
      </p>
      <p>
        {again && (
          <button type="button" class="button next" onClick={again}>
            Try again
          </button>
        )}{' '}
        <button type="button" class="button" onClick={memory}>
          Start without them
        </button>
      </p>
      <p class="quiet small">
        Nothing that is saved is touched. What you do without your classes joins them once they can
        be reached.
      </p>
    </main>
  );
}
