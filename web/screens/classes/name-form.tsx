import { useState } from 'preact/hooks';
import { say } from './wording.ts';

interface NameFormProps {
  readonly label: string;
  readonly name: string;
  /** What the button says. */
  readonly act: string;
  readonly placeholder?: string;
  /** The most signs it may have. */
  readonly longest?: number;
  /** Whether no name at all is a name, too. */
  readonly mayBeEmpty?: boolean;
  /** Takes the focus as soon as it is there. */
  readonly autofocus?: boolean;
  readonly onName: (name: string) => void;
  /** Gives up; Escape does so as well. */
  readonly onCancel?: () => void;
}

/** A line to write a name on. Enter takes it, without needless spaces. */
export function NameForm({
  label,
  name: before,
  act,
  placeholder,
  longest = 60,
  mayBeEmpty = false,
  autofocus = false,
  onName,
  onCancel,
}: NameFormProps) {
  const [text, setText] = useState(before);
  const name = text.trim().replace(/\s+/g, ' ');
  const isGood = mayBeEmpty || name !== '';
  return (
    <form
      class="name-line"
      onSubmit={(event) => {
        event.preventDefault();
        if (!isGood) return;
        setText(before);
        onName(name);
      }}
      onKeyDown={(event) => {
        if (event.key !== 'Escape' || !onCancel) return;
        event.preventDefault();
        onCancel();
      }}
    >
      <label>
        {label}
        <input
          type="text"
          value={text}
          maxLength={longest}
          placeholder={placeholder}
          autocomplete="off"
          spellcheck={false}
          ref={autofocus ? selectAll : undefined}
          onInput={(event) => setText(event.currentTarget.value)}
        />
      </label>
      <button type="submit" class="button" disabled={!isGood}>
        {act}
      </button>
      {onCancel && (
        <button type="button" class="button plain" onClick={onCancel}>
          {say.nameForm.cancel}
        </button>
      )}
    </form>
  );
}

/** Takes the focus when the field comes. */
function selectAll(field: HTMLInputElement | null): void {
  field?.focus();
  field?.select();
}
