import { useState } from 'preact/hooks';
import type { RosterLine, RosterProblem } from '../../../core/log/parse-roster.ts';

interface ListPreviewProps {
  readonly lines: readonly RosterLine[];
  readonly problems: readonly RosterProblem[];
  readonly onAdd: (names: readonly string[]) => void;
  readonly onCancel: () => void;
}

/** One line of the preview, as she has left it. */
interface Row {
  readonly line: number;
  readonly name: string;
  readonly isWanted: boolean;
  /** What is to be known of it; empty for nothing. */
  readonly said: string;
}

/** The children of a list, each to be renamed or left out before they are added. Lines that could not be read can be mended here. */
export function ListPreview({ lines, problems, onAdd, onCancel }: ListPreviewProps) {
  const [rows, setRows] = useState<readonly Row[]>(() => rowsFrom(lines, problems));
  const put = (at: number, some: Partial<Row>) =>
    setRows(rows.map((row, place) => (place === at ? { ...row, ...some } : row)));
  const names = rows
    .filter(({ isWanted }) => isWanted)
    .map(({ name }) => name.trim().replace(/\s+/g, ' '))
    .filter((name) => /\p{L}/u.test(name));
  return (
    <form
      class="list-preview"
      onSubmit={(event) => {
        event.preventDefault();
        if (names.length > 0) onAdd(names);
      }}
    >
      <ol>
        {rows.map(({ line, name, isWanted, said }, at) => (
          <li key={at} class={said === '' ? undefined : 'said'}>
            <input
              type="checkbox"
              checked={isWanted}
              aria-label={`Add ${name || `line ${line}`}`}
              onChange={(event) => put(at, { isWanted: event.currentTarget.checked })}
            />
            <input
              type="text"
              value={name}
              maxLength={40}
              autocomplete="off"
              spellcheck={false}
              aria-label={`Name in line ${line}`}
              onInput={(event) => {
                const next = event.currentTarget.value;
                put(at, { name: next, isWanted: isWanted || name === '' });
              }}
            />
            {said !== '' && <span class="small list-said">{said}</span>}
          </li>
        ))}
      </ol>
      <p class="list-acts">
        <button type="submit" class="button next" disabled={names.length === 0}>
          {names.length === 1 ? 'Add one child' : `Add ${names.length} children`}
        </button>
        <button type="button" class="button plain" onClick={onCancel}>
          Leave it
        </button>
      </p>
    </form>
  );
}

function rowsFrom(
  lines: readonly RosterLine[],
  problems: readonly RosterProblem[],
): readonly Row[] {
  const read = lines.map(({ line, name, there }) => ({
    line,
    name,
    isWanted: !there,
    said: there ? 'in the class already' : '',
  }));
  const unread = problems.map(({ line, text, message }) => ({
    line,
    name: '',
    isWanted: false,
    said: `Line ${line}: ${message} It says ${text.trim()}. Write the name here, or pass over it.`,
  }));
  return [...read, ...unread].sort((one, other) => one.line - other.line);
}
