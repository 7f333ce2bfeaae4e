import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { saveWhatIsHere } from '../classes/copies.ts';
import { cameBack } from '../memory/came-back.ts';
import { reopenClass, store } from '../memory/open-class.ts';
import { asideCopies, putNoticeAway, trouble } from '../memory/shelf.ts';
import { saveText } from './save-text.ts';

/** Says kindly when this device cannot remember, or when something was lost or could not be read. */
export function Banner() {
  const lost = store.trouble.value;
  return (
    <>
      {lost && <NotKept message={lost.message} />}
      {cameBack.value && <CameBack />}
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
          Something kept on this device could not be read, so we began afresh there. A copy of it
          was put aside; nothing was thrown away.
        </Notice>
      )}
    </>
  );
}

/** The log of the class cannot be kept: what to do about it, with the page going on meanwhile. */
function NotKept({ message }: { readonly message: string }) {
  const [said, setSaid] = useState('');
  const tryAgain = async () => {
    setSaid('');
    const outcome = await store.append([]);
    if ('error' in outcome) setSaid('Still not. What you do goes on meanwhile.');
    else await reopenClass();
  };
  return (
    <Notice
      acts={
        <>
          <SaveCopy tell={setSaid} />
          <Plain does={tryAgain}>Try again</Plain>
          <p>{said}</p>
        </>
      }
    >
      {message}
    </Notice>
  );
}

/** All classes were lost and came back: what to look at, and what to do. */
function CameBack() {
  const [said, setSaid] = useState('');
  const close = () => {
    cameBack.value = false;
  };
  return (
    <Notice
      acts={
        <>
          <SaveCopy tell={setSaid} />
          <Plain does={close}>Close</Plain>
          <p>{said}</p>
        </>
      }
    >
      This browser lost its record of your classes. It came back from the second copy on this
      device. Please look whether the last marks are there, and save a copy as a file.
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

function SaveCopy({ tell }: { readonly tell: (said: string) => void }) {
  const save = async () => {
    const saved = await saveWhatIsHere();
    tell('error' in saved ? saved.error.message : `Saved as ${saved.name}.`);
  };
  return (
    <button type="button" class="button" onClick={save}>
      Save a copy
    </button>
  );
}

function saveCopies(): void {
  const copies = asideCopies();
  saveText('sweepline-set-aside.json', JSON.stringify(copies, null, 2), 'application/json');
}
