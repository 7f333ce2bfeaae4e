import type { PaperAnswer, PapersWord } from '../../../core/log/event.ts';
import { shownAnswer } from './answer-said.ts';

interface FieldProps {
  readonly name: string;
  readonly said: PapersWord;
  readonly answer: PaperAnswer | null;
  /** What stands in the field while it is written in; null before anything is typed, false elsewhere. */
  readonly typed: string | null | false;
  readonly onTurn: () => void;
  readonly onType: (text: string) => void;
}

/** One word of one child: what was written and what it shows, or the field in which it is typed. */
export function Field({ name, said, answer, typed, onTurn, onType }: FieldProps) {
  const shown = answer ? shownAnswer(answer, said) : null;
  if (typed !== false) {
    const before = answer?.kind === 'wrote' ? answer.text : '';
    return (
      <td class="at-field">
        <input
          type="text"
          aria-label={name}
          value={typed ?? before}
          autocomplete="off"
          autocapitalize="none"
          autocorrect="off"
          spellcheck={false}
          onInput={(event) => onType(event.currentTarget.value)}
        />
      </td>
    );
  }
  return (
    <td>
      <button
        type="button"
        class={shown ? `glance glance-${shown.glance}` : 'unread'}
        tabIndex={-1}
        onClick={onTurn}
      >
        <span class="for-ears">{name}: </span>
        <span class="wrote">{shown?.text ?? ''}</span>
        {shown && shown.note !== '' && <span class="field-note">{shown.note}</span>}
      </button>
    </td>
  );
}
