import './key-sheet.css';
import { useEffect, useRef } from 'preact/hooks';
import { KEYS } from './keys.ts';

/** The sheet of keys, on '?'. */
export function KeySheet({ onClose }: { readonly onClose: () => void }) {
  const sheet = useRef<HTMLDialogElement>(null);
  useEffect(() => sheet.current?.showModal(), []);
  return (
    <dialog class="key-sheet" ref={sheet} onClose={onClose} aria-labelledby="key-sheet-title">
      <h2 id="key-sheet-title">Keys of the stage</h2>
      <dl>
        {KEYS.map(({ wish, shown, does }) => (
          <div key={wish}>
            <dt>
              {shown.map((key) => (
                <kbd key={key} class="key">
                  {key}
                </kbd>
              ))}
            </dt>
            <dd>{does}</dd>
          </div>
        ))}
      </dl>
      <p class="quiet small">Or touch: beside the row for next and back, under the row to sweep.</p>
      <button type="button" class="button next" onClick={() => sheet.current?.close()}>
        Close
      </button>
    </dialog>
  );
}
