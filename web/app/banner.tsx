import { useState } from 'preact/hooks';
import { saveWhatIsHere } from '../classes/copies.ts';
import { cameBack } from '../memory/came-back.ts';
import { reopenClass, store } from '../memory/open-class.ts';
import { asideCopies, putNoticeAway, trouble } from '../memory/shelf.ts';
import { saveText } from './save-text.ts';

/** Says kindly when this device cannot remember, or when something remembered could not be read. */
export function Banner() {
  const lost = store.trouble.value;
  return (
    <>
      {lost && <NotKept message={lost.message} />}
      {cameBack.value && <CameBack />}
      {trouble.value === 'refused' && !lost && (
        <div class="banner" role="status">
          <p>
            This browser will not let Sweepline remember anything just now. Everything works until
            you close this window; save your order as a file if you changed it.
          </p>
        </div>
      )}
      {trouble.value === 'unreadable' && (
        <div class="banner" role="status">
          <p>
            Something kept on this device could not be read, so we began afresh there. A copy of it
            was put aside; nothing was thrown away.
          </p>
          <button type="button" class="button" onClick={saveCopies}>
            Save the copy as a file
          </button>
          <button type="button" class="button plain" onClick={putNoticeAway}>
            Close
          </button>
        </div>
      )}
    </>
  );
}

/** The log of the class cannot be kept: what to do about it, with the page going on meanwhile. */
function NotKept({ message }: { readonly message: string }) {
  const [said, setSaid] = useState('');
  return (
    <div class="banner" role="status">
      <p>{message}</p>
      <SaveCopy tell={setSaid} />
      <button
        type="button"
        class="button plain"
        onClick={async () => {
          setSaid('');
          const outcome = await store.append([]);
          if ('error' in outcome) setSaid('Still not. What you do goes on meanwhile.');
          else await reopenClass();
        }}
      >
        Try again
      </button>
      <p>{said}</p>
    </div>
  );
}

/** All classes were lost and came back: what to look at, and what to do. */
function CameBack() {
  const [said, setSaid] = useState('');
  return (
    <div class="banner" role="status">
      <p>
        This browser lost its record of your classes. Everything came back from the second copy on
        this device. Please look whether the last marks are there, and save a copy as a file.
      </p>
      <SaveCopy tell={setSaid} />
      <button
        type="button"
        class="button plain"
        onClick={() => {
          cameBack.value = false;
        }}
      >
        Close
      </button>
      <p>{said}</p>
    </div>
  );
}

function SaveCopy({ tell }: { readonly tell: (said: string) => void }) {
  return (
    <button
      type="button"
      class="button"
      onClick={async () => {
        const saved = await saveWhatIsHere();
        tell('error' in saved ? saved.error.message : `Saved as ${saved.name}.`);
      }}
    >
      Save a copy
    </button>
  );
}

function saveCopies(): void {
  const copies = asideCopies();
  saveText('sweepline-set-aside.json', JSON.stringify(copies, null, 2), 'application/json');
}
