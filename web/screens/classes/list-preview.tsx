import { useState } from 'preact/hooks';
import type { RosterLine, RosterProblem } from '../../../core/log/parse-roster.ts';
import { say } from './wording.ts';

interface ListPreviewProps {
  readonly lines: readonly RosterLine[];
  readonly problems: readonly RosterProblem[];
  readonly onAdd: (names: readonly string[]) => void;
  readonly onCancel: () => void;
}

/** One line of the preview, as she has left it. */
interface ListedChild {
  readonly line: number;
  readonly name: string;
  readonly isWanted: boolean;
  /** What is to be known of it; empty for nothing. */
  readonly said: string;
}

/** The children of a list, each to be renamed or left out before they are added. Lines that could not be read can be mended here. */
export function ListPreview({ lines, problems, onAdd, onCancel }: ListPreviewProps) {
  const [rows, setRows] = useState<readonly ListedChild[]>(() => rowsFrom(lines, problems));
  const put = (at: number, some: Partial<ListedChild>) =>
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
              aria-label={say.listPreview.add(name || say.listPreview.line(line))}
              onChange={(event) => put(at, { isWanted: event.currentTarget.checked })}
            />
            <input
              type="text"
              value={name}
              maxLength={40}
              autocomplete="off"
              spellcheck={false}
              aria-label={say.listPreview.nameInLine(line)}
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
          {names.length === 1
            ? say.listPreview.addOneChild
            : say.listPreview.addChildren(names.length)}
        </button>
        <button type="button" class="button plain" onClick={onCancel}>
          {say.listPreview.leaveIt}
        </button>
      </p>
    </form>
  );
}

function rowsFrom(
  lines: readonly RosterLine[],
  problems: readonly RosterProblem[],
): readonly ListedChild[] {
  const read = lines.map(({ line, name, there }) => ({
    line,
    name,
    isWanted: !there,
    said: there ? say.listPreview.inTheClassAlready : '',
  }));
  const unread = problems.map(({ line, text, message }) => ({
    line,
    name: '',
    isWanted: false,
    said: say.listPreview.lineItSaysWrite(line, message, text.trim()),
  }));
  return [...read, ...unread].sort((one, other) => one.line - other.line);
}
