import { useEffect } from 'preact/hooks';
import { latest, undoLast } from '../state/undo.ts';
import { say } from './wording.ts';

const shownFor = 8000;

/** For some seconds after a change: what it was, and the way back. Ctrl+Z works at any time. */
export function UndoBar() {
  const shown = latest.value;

  useEffect(() => {
    if (!shown) return;
    const timer = setTimeout(() => {
      latest.value = null;
    }, shownFor);
    return () => clearTimeout(timer);
  }, [shown]);

  useEffect(() => {
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  }, []);

  return (
    <div role="status">
      {shown && (
        <div class="undo-bar">
          <p>{shown.said}</p>
          <button type="button" class="button" onClick={() => undoLast()}>
            {say.undoBar.undo}
          </button>
        </div>
      )}
    </div>
  );
}

function onKey(event: KeyboardEvent): void {
  if (!(event.ctrlKey || event.metaKey) || event.key !== 'z' || event.shiftKey) return;
  if (isTextField(event.target)) return;
  event.preventDefault();
  undoLast();
}

function isTextField(target: EventTarget | null): boolean {
  return (
    target instanceof HTMLTextAreaElement ||
    (target instanceof HTMLInputElement && ['text', 'password'].includes(target.type))
  );
}
