import { useState } from 'preact/hooks';
import { type ListedClass, nameOfClass } from '../../state/class-list.ts';
import { PLAIN_COPY, saveCopy } from '../../state/copies.ts';
import { forgetClass } from '../../state/forget-class.ts';
import { say } from './wording.ts';

interface DeleteClassProps {
  readonly listed: ListedClass;
  readonly onCancel: () => void;
}

const word = say.deleteClass.delete;

/** Asks for a word before a class is deleted for good, and offers a copy first. */
export function DeleteClass({ listed, onCancel }: DeleteClassProps) {
  const [typed, setTyped] = useState('');
  const [said, setSaid] = useState<string>();
  const isSure = typed.trim().toLowerCase() === word;
  return (
    <form
      class="delete-class"
      onSubmit={async (event) => {
        event.preventDefault();
        if (!isSure) return;
        const error = await forgetClass(listed.classId);
        if (error) setSaid(say.deleteClass.itCouldNot(error.message));
      }}
    >
      <p>{say.deleteClass.everythingInGoes(nameOfClass(listed))}</p>
      <p>
        <button
          type="button"
          class="button"
          onClick={async () => {
            const outcome = await saveCopy([listed], PLAIN_COPY);
            setSaid(
              'error' in outcome ? outcome.error.message : say.deleteClass.savedAs(outcome.name),
            );
          }}
        >
          {say.deleteClass.saveACopyFirst}
        </button>
      </p>
      <label>
        {say.deleteClass.toDeleteItType(word)}
        <input
          type="text"
          value={typed}
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          onInput={(event) => setTyped(event.currentTarget.value)}
        />
      </label>
      <p class="buttons">
        <button type="submit" class="button stop" disabled={!isSure}>
          {say.deleteClass.deleteForGood}
        </button>
        <button type="button" class="button plain" onClick={onCancel}>
          {say.deleteClass.keepIt}
        </button>
      </p>
      <p role="status">{said}</p>
    </form>
  );
}
