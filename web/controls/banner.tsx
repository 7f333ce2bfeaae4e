import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { saveText } from '../device/save-text.ts';
import { asideCopies, putNoticeAway, trouble } from '../device/shelf.ts';
import { amiss, putAmissAway } from '../state/came-back.ts';
import { saveWhatIsHere } from '../state/copies.ts';
import { reopenClass, store } from '../state/open-class.ts';

/** Says kindly when this device cannot remember, or when something was lost or could not be read. */
export function Banner() {
  const lost = store.trouble.value;
  return (
    <>
      {lost && !store.inMemory.value && (
        <CopyOffered act="Try again" does={tryAgain}>
          {lost.message}
        </CopyOffered>
      )}
      {store.inMemory.value && (
        <CopyOffered act="Try again" does={tryToLeaveMemory}>
          You are working without your classes, since what is saved on this device could not be
          reached. What you do now joins them once it can. To be safe, save a copy as a file before
          you close this window.
        </CopyOffered>
      )}
      {isAmiss(amiss.value) && (
        <CopyOffered act="Close" does={putAmissAway}>
          {saidOfAmiss(amiss.value)}
        </CopyOffered>
      )}
      {store.aside.value.length > 0 && (
        <CopyOffered act="Try again" does={tryAgain}>
          One thing you entered could not be kept on this device and was set aside. Everything else
          is kept. Save a copy as a file; it holds that too. You also find it on the class page,
          under Keep it safe.
        </CopyOffered>
      )}
      {trouble.value === 'refused' && !lost && (
        <Notice>
          This browser will not let Sweepline remember anything just now. Everything works until you
          close this window; save your order as a file if you changed it.
        </Notice>
      )}
      {trouble.value === 'unreadable' && (
        <Notice
          acts={
            <>
              <button type="button" class="button" onClick={saveCopies}>
                Save the copy as a file
              </button>
              <Plain does={putNoticeAway}>Close</Plain>
            </>
          }
        >
          Something kept on this device could not be read, so that part starts fresh. A copy of it
          was put aside; nothing was thrown away.
        </Notice>
      )}
    </>
  );
}

/** Offers again what could not be kept. */
async function tryAgain(tell: Tell): Promise<void> {
  tell('');
  const outcome = await store.append([]);
  if ('error' in outcome) tell('Still not saving. You can keep working.');
  else await reopenClass();
}

async function tryToLeaveMemory(tell: Tell): Promise<void> {
  tell('');
  const outcome = await store.leaveMemory();
  if ('error' in outcome) tell('It still does not answer. What you do goes on meanwhile.');
  else await reopenClass();
}

type Amiss = typeof amiss.value;

function isAmiss({ putBack, copied, damaged, twofold }: Amiss): boolean {
  return putBack + copied + damaged + twofold > 0;
}

function saidOfAmiss({ putBack, copied, damaged, twofold }: Amiss): string {
  const count = (many: number, one: string, more: string) =>
    many === 1 ? one : `${many.toLocaleString('en-US')} ${more}`;
  return [
    ...(putBack > 0
      ? [
          `This browser lost part of its record of your classes. ${count(putBack, 'One entry', 'entries')} came back from the second copy on this device.`,
        ]
      : []),
    ...(copied > 0
      ? [
          `The second copy on this device had lost ${count(copied, 'one entry', 'entries')}, which ${copied === 1 ? 'was' : 'were'} copied again.`,
        ]
      : []),
    ...(damaged > 0
      ? [
          `${count(damaged, 'One record', 'records')} on this device could not be read and ${damaged === 1 ? 'was' : 'were'} set aside.`,
        ]
      : []),
    ...(twofold > 0
      ? [
          `${count(twofold, 'One entry is', 'entries are')} told in two ways on this device; the first stands.`,
        ]
      : []),
    'Please check that your last marks are there, and save a copy as a file.',
  ].join(' ');
}

/** Says below a notice what came of an act. */
type Tell = (said: string) => void;

interface CopyOfferedProps {
  readonly act: string;
  readonly does: (tell: Tell) => unknown;
  readonly children: string;
}

/** A notice that asks her to save a copy, and one more thing to do about it. */
function CopyOffered({ act, does, children }: CopyOfferedProps) {
  const [said, setSaid] = useState('');
  const save = async () => {
    const saved = await saveWhatIsHere();
    setSaid('error' in saved ? saved.error.message : `Saved as ${saved.name}.`);
  };
  return (
    <Notice
      acts={
        <>
          <button type="button" class="button" onClick={save}>
            Save a copy
          </button>
          <Plain does={() => does(setSaid)}>{act}</Plain>
          <p>{said}</p>
        </>
      }
    >
      {children}
    </Notice>
  );
}

interface NoticeProps {
  readonly acts?: ComponentChildren;
  readonly children: ComponentChildren;
}

function Notice({ acts, children }: NoticeProps) {
  return (
    <div class="banner" role="status">
      <p>{children}</p>
      {acts}
    </div>
  );
}

interface PlainProps {
  readonly does: () => unknown;
  readonly children: string;
}

function Plain({ does, children }: PlainProps) {
  return (
    <button type="button" class="button plain" onClick={does}>
      {children}
    </button>
  );
}

function saveCopies(): void {
  const copies = asideCopies();
  saveText('sweepline-set-aside.json', JSON.stringify(copies, null, 2), 'application/json');
}
