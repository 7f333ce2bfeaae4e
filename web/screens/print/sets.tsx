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
    <section class="print-sets" aria-label="Your sets">
      {sets.map((set) => (
        <span key={set.name} class="print-set">
          <button type="button" class="button" onClick={() => applySet(set)}>
            {set.name}
          </button>
          <button
            type="button"
            class="button plain"
            aria-haspopup="dialog"
            aria-label={`Change ${set.name}`}
            onClick={(event) => setOpen({ anchor: event.currentTarget, set })}
          >
            Change
          </button>
        </span>
      ))}
      <button
        type="button"
        class="button plain"
        aria-haspopup="dialog"
        onClick={(event) => setOpen({ anchor: event.currentTarget, set: null })}
      >
        Keep these choices
      </button>
      {open && (
        <Popover
          anchor={open.anchor}
          title={open.set ? `Change ${open.set.name}` : 'Keep these choices'}
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
        <span>Name</span>
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
          {set ? 'Rename' : 'Keep'}
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
            Delete
          </button>
        )}
      </p>
    </form>
  );
}
