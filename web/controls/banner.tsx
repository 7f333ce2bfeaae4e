import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { saveText } from '../device/save-text.ts';
import { asideCopies, putNoticeAway, trouble } from '../device/shelf.ts';
import { cameBack } from '../state/came-back.ts';
import { saveWhatIsHere } from '../state/copies.ts';
import { reopenClass, store } from '../state/open-class.ts';

/** Says kindly when this device cannot remember, or when something was lost or could not be read. */
export function Banner() {
  const lost = store.trouble.value;
  return (
    <>
      {lost && (
        <CopyOffered act="Try again" does={tryAgain}>
          {lost.message}
        </CopyOffered>
      )}
      {cameBack.value && (
        <CopyOffered act="Close" does={putCameBackAway}>
          This browser lost its record of your classes. It came back from the second copy on this
          device. Please look whether the last marks are there, and save a copy as a file.
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
          Something kept on this device could not be read, so we began afresh there. A copy of it
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
  if ('error' in outcome) tell('Still not. What you do goes on meanwhile.');
  else await reopenClass();
}

function putCameBackAway(): void {
  cameBack.value = false;
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
