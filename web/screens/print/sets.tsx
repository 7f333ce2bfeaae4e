import { useState } from 'preact/hooks';
import { Popover } from '../../controls/popover.tsx';
import { choices } from '../../state/paper/print-choices.ts';
import {
  applySet,
  keepSet,
  type PrintSet,
  printSets,
  removeSet,
  renameSet,
} from '../../state/paper/print-sets.ts';
import { thingNames } from '../../state/paper/print-things.ts';
import { say } from './wording.ts';

interface Open {
  readonly anchor: HTMLElement;
  /** The set to change; null for the choices of now, to be kept. */
  readonly set: PrintSet | null;
}

/** Her sets of choices, each a press away, and the choices of now to be kept as one. */
export function Sets() {
  const [open, setOpen] = useState<Open>();
  const close = () => setOpen(undefined);
  const sets = printSets.value;
  return (
    <section class="print-sets" aria-label={say.sets.yourSets}>
      {sets.map((set) => (
        <span key={set.name} class="print-set">
          <button type="button" class="button" onClick={() => applySet(set)}>
            {set.name}
          </button>
          <button
            type="button"
            class="button plain"
            aria-haspopup="dialog"
            aria-label={say.sets.change(set.name)}
            onClick={(event) => setOpen({ anchor: event.currentTarget, set })}
          >
            {say.sets.changeAlone}
          </button>
        </span>
      ))}
      <button
        type="button"
        class="button plain"
        aria-haspopup="dialog"
        onClick={(event) => setOpen({ anchor: event.currentTarget, set: null })}
      >
        {say.sets.keepTheseChoices}
      </button>
      {open && (
        <Popover
          anchor={open.anchor}
          title={open.set ? say.sets.change(open.set.name) : say.sets.keepTheseChoices}
          onClose={close}
        >
          <SetSheet set={open.set} onDone={close} />
        </Popover>
      )}
    </section>
  );
}

function SetSheet({ set, onDone }: { readonly set: PrintSet | null; readonly onDone: () => void }) {
  const [name, setName] = useState(set?.name ?? thingNames[choices.peek().kind]);
  return (
    <form
      class="set-sheet"
      onSubmit={(event) => {
        event.preventDefault();
        if (name.trim() === '') return;
        if (set) renameSet(set.name, name);
        else keepSet(name);
        onDone();
      }}
    >
      <label>
        <span>{say.sets.name}</span>
        <input
          type="text"
          value={name}
          maxLength={60}
          autocomplete="off"
          onInput={(event) => setName(event.currentTarget.value)}
        />
      </label>
      <p class="popover-buttons">
        <button type="submit" class="button" disabled={name.trim() === ''}>
          {set ? say.sets.rename : say.sets.keep}
        </button>
        {set && (
          <button
            type="button"
            class="button plain"
            onClick={() => {
              removeSet(set.name);
              onDone();
            }}
          >
            {say.sets.delete}
          </button>
        )}
      </p>
    </form>
  );
}
