import type { DamagedLine } from '../../../core/log/log-file.ts';
import { saveText } from '../../device/save-text.ts';
import { classList, nameOfClass } from '../../state/class-list.ts';
import { classState, openClass } from '../../state/open-class.ts';
import type { Brought } from './bring-in.ts';

/** Says what a file brought, and keeps aside for her what could not be read. */
export function BroughtIn({ outcome }: { readonly outcome: Brought }) {
  if ('error' in outcome) {
    const { code, message } = outcome.error;
    return <p class={ASKING.has(code) ? undefined : 'class-problem'}>{message}</p>;
  }
  const { added, known, erased, classIds, damaged, notUnderstood, setRight, twofold, isWhole } =
    outcome;
  const came = classList.value.filter(({ classId }) => classIds.includes(classId));
  return (
    <section class="brought" aria-label="What was brought in">
      <p>
        <b>{added === 0 ? 'Nothing in it was new.' : `${counted(added)} new.`}</b>{' '}
        {known > 0 && `${counted(known)} here already.`}
      </p>
      {erased > 0 && <p>{counted(erased)} about a child deleted here for good, and stayed out.</p>}
      {came.map(({ classId, name }) => (
        <p key={classId}>
          {nameOfClass({ name })}{' '}
          {classId === classState.value.id ? (
            <span class="quiet">is open now</span>
          ) : (
            <button type="button" class="button" onClick={() => openClass(classId)}>
              Open it
            </button>
          )}
        </p>
      ))}
      {notUnderstood > 0 && (
        <p>
          {counted(notUnderstood)} written by a newer Sweepline.{' '}
          {notUnderstood === 1 ? 'It is kept, and shows' : 'They are kept, and show'} once this one
          is up to date.
        </p>
      )}
      {setRight > 0 && (
        <p>
          {counted(setRight)} dated far ahead by a clock that was wrong, and{' '}
          {setRight === 1 ? 'counts' : 'count'} as of today.
        </p>
      )}
      {isWhole === true && <p class="quiet small">The copy is whole: as it was saved.</p>}
      {isWhole === false && (
        <p class="class-problem">
          This copy is not whole: it was cut off or changed since it was saved. What could be read
          was taken. If you have another copy, bring that in too.
        </p>
      )}
      {twofold > 0 && (
        <p>
          {counted(twofold)} here already, and this file tells {twofold === 1 ? 'it' : 'them'}{' '}
          differently. What was here stands.
        </p>
      )}
      {damaged.length > 0 && <Damaged lines={damaged} />}
    </section>
  );
}

/** What is no problem: it asks her something, or she wanted it so. */
const ASKING: ReadonlySet<string> = new Set(['locked', 'deleted', 'stopped']);

const mostShown = 8;

function Damaged({ lines }: { readonly lines: readonly DamagedLine[] }) {
  return (
    <div class="damaged">
      <p>
        {lines.length === 1 ? 'One line' : `${lines.length} lines`} of the file could not be read.
        Everything else was taken.
      </p>
      <ol>
        {lines.slice(0, mostShown).map(({ line, text, message }) => (
          <li key={line}>
            <b>Line {line}</b> {message}
            <code>{text.length > 160 ? `${text.slice(0, 160)} …` : text}</code>
          </li>
        ))}
      </ol>
      {lines.length > mostShown && <p class="quiet">and {lines.length - mostShown} more</p>}
      <button
        type="button"
        class="button"
        onClick={() =>
          saveText(
            'sweepline-damaged-lines.txt',
            lines.map(({ text }) => `${text}\n`).join(''),
            'text/plain',
          )
        }
      >
        Save {lines.length === 1 ? 'this line' : 'these lines'} as a file
      </button>
    </div>
  );
}

function counted(entries: number): string {
  return entries === 1 ? '1 entry was' : `${entries.toLocaleString('en-US')} entries were`;
}
