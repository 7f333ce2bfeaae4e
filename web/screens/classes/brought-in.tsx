import type { DamagedLine } from '../../../core/log/log-file.ts';
import { saveText } from '../../device/save-text.ts';
import { classList, nameOfClass } from '../../state/class-list.ts';
import { classState, openClass } from '../../state/open-class.ts';
import type { Brought } from './bring-in.ts';
import { say } from './wording.ts';

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
    <section class="brought" aria-label={say.broughtIn.whatWasBroughtIn}>
      <p>
        <b>{added === 0 ? say.broughtIn.nothingIn : say.broughtIn.new(counted(added))}</b>{' '}
        {known > 0 && say.broughtIn.hereAlready(counted(known))}
      </p>
      {erased > 0 && <p>{say.broughtIn.aboutAChildDeleted(counted(erased))}</p>}
      {came.map(({ classId, name }) => (
        <p key={classId}>
          {nameOfClass({ name })}{' '}
          {classId === classState.value.id ? (
            <span class="quiet">{say.broughtIn.isOpenNow}</span>
          ) : (
            <button type="button" class="button" onClick={() => openClass(classId)}>
              {say.broughtIn.openIt}
            </button>
          )}
        </p>
      ))}
      {notUnderstood > 0 && (
        <p>
          {say.broughtIn.writtenByANewer(
            counted(notUnderstood),
            notUnderstood === 1 ? say.broughtIn.itIsKept : say.broughtIn.theyAreKept,
          )}
        </p>
      )}
      {setRight > 0 && (
        <p>
          {say.broughtIn.datedFarAhead(
            counted(setRight),
            setRight === 1 ? say.broughtIn.counts : say.broughtIn.count,
          )}
        </p>
      )}
      {isWhole === true && <p class="quiet small">{say.broughtIn.theCopyIsWhole}</p>}
      {isWhole === false && <p class="class-problem">{say.broughtIn.thisCopyIsNot}</p>}
      {twofold > 0 && (
        <p>
          {say.broughtIn.hereAlreadyAndThisFile(
            counted(twofold),
            twofold === 1 ? say.broughtIn.it : say.broughtIn.them,
          )}
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
        {say.broughtIn.ofTheFileCould(
          lines.length === 1 ? say.broughtIn.oneLine : say.broughtIn.lines(lines.length),
        )}
      </p>
      <ol>
        {lines.slice(0, mostShown).map(({ line, text, message }) => (
          <li key={line}>
            <b>{say.broughtIn.line(line)}</b> {message}
            <code>{text.length > 160 ? `${text.slice(0, 160)} …` : text}</code>
          </li>
        ))}
      </ol>
      {lines.length > mostShown && (
        <p class="quiet">{say.broughtIn.andMore(lines.length - mostShown)}</p>
      )}
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
        {say.broughtIn.saveAsAFile(
          lines.length === 1 ? say.broughtIn.thisLine : say.broughtIn.theseLines,
        )}
      </button>
    </div>
  );
}

function counted(entries: number): string {
  return entries === 1
    ? say.broughtIn.n1EntryWas
    : say.broughtIn.entriesWere(entries.toLocaleString('en-US'));
}
