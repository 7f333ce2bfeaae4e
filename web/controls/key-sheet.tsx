import './key-sheet.css';
import { useEffect, useRef } from 'preact/hooks';
import { KEYS } from '../warm-up/keys.ts';
import type { Role } from '../warm-up/window-here.ts';

/** The sheet of keys, on '?': enough for someone who has never run a warm-up here. */
export function KeySheet({
  where,
  onClose,
}: {
  readonly where: Role;
  readonly onClose: () => void;
}) {
  const sheet = useRef<HTMLDialogElement>(null);
  useEffect(() => sheet.current?.showModal(), []);
  return (
    <dialog class="key-sheet" ref={sheet} onClose={onClose} aria-labelledby="key-sheet-title">
      <h2 id="key-sheet-title">Keys of the {where}</h2>
      <dl>
        <Row shown={['1', '–', '9']} does="the card that broke; then what was heard instead" />
        <Row shown={['0']} does="the whole word broke; then: something else" />
        <Row shown={['shift', '1–9']} does="a card of the word before" />
        {KEYS.filter(({ only }) => only === undefined || only === where).map(
          ({ wish, shown, does }) => (
            <Row key={wish} shown={shown} does={does} />
          ),
        )}
      </dl>
      <p class="quiet small">
        {where === 'stage'
          ? 'Or touch: a card turns it, under the row sweeps, beside the row goes on or back.'
          : 'Or touch a card to mark it. What is not marked went well.'}
      </p>
      <button type="button" class="button next" onClick={() => sheet.current?.close()}>
        Close
      </button>
    </dialog>
  );
}

function Row({ shown, does }: { readonly shown: readonly string[]; readonly does: string }) {
  return (
    <div>
      <dt>
        {shown.map((key) => (
          <kbd key={key} class="key">
            {key}
          </kbd>
        ))}
      </dt>
      <dd>{does}</dd>
    </div>
  );
}
