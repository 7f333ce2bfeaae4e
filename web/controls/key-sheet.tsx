import './key-sheet.css';
import { useEffect, useRef } from 'preact/hooks';
import { KEYS } from '../warm-up/keys.ts';
import type { WindowRole } from '../warm-up/window-here.ts';
import { say } from './wording.ts';

/** The sheet of keys, on '?': enough for someone who has never run a warm-up here. */
export function KeySheet({
  where,
  onClose,
}: {
  readonly where: WindowRole;
  readonly onClose: () => void;
}) {
  const sheet = useRef<HTMLDialogElement>(null);
  useEffect(() => sheet.current?.showModal(), []);
  return (
    <dialog class="key-sheet" ref={sheet} onClose={onClose} aria-labelledby="key-sheet-title">
      <h2 id="key-sheet-title">{say.keySheet.keysOfThe(where)}</h2>
      <dl>
        <Row shown={['1', '–', '9']} does={say.keySheet.theCardThatBroke} />
        <Row shown={['0']} does={say.keySheet.theWholeWordBroke} />
        <Row shown={[say.keySheet.shift, '1–9']} does={say.keySheet.aCard} />
        {KEYS.filter(({ only }) => only === undefined || only === where).map(
          ({ wish, shown, does }) => (
            <Row key={wish} shown={shown} does={does} />
          ),
        )}
      </dl>
      <p class="quiet small">
        {where === 'stage' ? say.keySheet.orTouchACard : say.keySheet.orTouchACardToMark}
      </p>
      <button type="button" class="button next" onClick={() => sheet.current?.close()}>
        {say.keySheet.close}
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
