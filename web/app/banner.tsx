import { asideCopies, trouble } from '../memory/shelf.ts';
import { saveText } from './save-text.ts';

/** Says kindly when this device cannot remember, or when something remembered could not be read. */
export function Banner() {
  if (trouble.value === 'refused') {
    return (
      <div class="banner" role="status">
        <p>
          This browser will not let Sweepline remember anything just now. Everything works until you
          close this window; save your order as a file if you changed it.
        </p>
      </div>
    );
  }
  if (trouble.value === 'unreadable') {
    return (
      <div class="banner" role="status">
        <p>
          Something kept on this device could not be read, so we began afresh there. A copy of it
          was put aside; nothing was thrown away.
        </p>
        <button type="button" class="button" onClick={saveCopies}>
          Save the copy as a file
        </button>
        <button type="button" class="button plain" onClick={hide}>
          Close
        </button>
      </div>
    );
  }
  return null;
}

function saveCopies(): void {
  const copies = asideCopies();
  saveText('sweepline-set-aside.json', JSON.stringify(copies, null, 2), 'application/json');
}

function hide(): void {
  trouble.value = null;
}
