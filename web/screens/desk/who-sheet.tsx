import type { ChildId } from '../../../core/ids.ts';
import './who-sheet.css';
import { useEffect, useRef, useState } from 'preact/hooks';
import { absent } from '../../state/absent.ts';
import { children } from '../../state/open-class.ts';
import { say } from './wording.ts';

interface WhoSheetProps {
  /** What is chosen: `Who reads now?` */
  readonly title: string;
  /** Whom it is now; null for all together. */
  readonly now: ChildId | null;
  /** Whether all together can be chosen. */
  readonly mayBeAll?: boolean;
  readonly onWho: (child: ChildId | null) => void;
  readonly onClose: () => void;
}

/** The names of those who are there: one tap chooses, or the first letters of the name and Enter. */
export function WhoSheet({ title, now, mayBeAll = false, onWho, onClose }: WhoSheetProps) {
  const [typed, setTyped] = useState('');
  const sheet = useRef<HTMLDialogElement>(null);
  useEffect(() => sheet.current?.showModal(), []);
  const there = children.value.filter(({ id }) => !absent.value.has(id));
  const start = typed.trim().toLocaleLowerCase();
  const found = there.filter(({ name }) => name.toLocaleLowerCase().startsWith(start));
  const choose = (child: ChildId | null) => {
    onWho(child);
    onClose();
  };
  return (
    <dialog ref={sheet} class="who-sheet" aria-label={title} onClose={onClose}>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          const [first] = found;
          if (first) choose(first.id);
        }}
      >
        <h2>{title}</h2>
        <input
          autofocus
          type="text"
          aria-label={say.whoSheet.firstLetters}
          placeholder={say.whoSheet.firstLettersThenEnter}
          autocomplete="off"
          value={typed}
          onInput={({ currentTarget }) => setTyped(currentTarget.value)}
        />
        <div class="who-names">
          {mayBeAll && (
            <button type="button" aria-pressed={now === null} onClick={() => choose(null)}>
              {say.whoSheet.allTogether}
            </button>
          )}
          {found.map(({ id, name }) => (
            <button key={id} type="button" aria-pressed={id === now} onClick={() => choose(id)}>
              {name}
            </button>
          ))}
          {found.length === 0 && <p class="quiet">{say.whoSheet.noNameHereStarts}</p>}
        </div>
        <button type="button" class="button" onClick={onClose}>
          {say.whoSheet.close}
        </button>
      </form>
    </dialog>
  );
}
