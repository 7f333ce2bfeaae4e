import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { say } from './wording.ts';

interface NameStageProps {
  /** What the button says, such as *Rename*. */
  readonly opens: string;
  /** What it is for, said after that to a screen reader. */
  readonly about: string;
  /** The name in the field when it opens. */
  readonly begins: string;
  readonly onName: (name: string) => void;
}

/** A quiet button that becomes a field for the name of a stage; Enter takes it, Escape leaves all as it was. */
export function NameStage({ opens, about, begins, onName }: NameStageProps) {
  const [isOpen, setOpen] = useState(false);
  const field = useRef<HTMLInputElement>(null);
  const button = useRef<HTMLButtonElement>(null);
  const wasOpen = useRef(false);
  useLayoutEffect(() => {
    if (isOpen) field.current?.select();
    else if (wasOpen.current) button.current?.focus();
    wasOpen.current = isOpen;
  }, [isOpen]);
  const close = () => setOpen(false);
  if (!isOpen) {
    return (
      <button
        type="button"
        class="link name-stage"
        ref={button}
        aria-label={`${opens}: ${about}`}
        onClick={() => setOpen(true)}
      >
        {opens}
      </button>
    );
  }
  return (
    <form
      class="name-stage"
      onSubmit={(event) => {
        event.preventDefault();
        const name = field.current?.value.trim() ?? '';
        close();
        if (name !== '' && name !== begins) onName(name);
      }}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.stopPropagation();
        close();
      }}
    >
      <input
        ref={field}
        aria-label={say.nameStage.nameOfTheStage}
        maxLength={60}
        defaultValue={begins}
        autocomplete="off"
      />
      <button type="submit" class="button">
        {say.nameStage.keep}
      </button>
    </form>
  );
}
