import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { saveText } from '../device/save-text.ts';
import { asideCopies, putNoticeAway, trouble } from '../device/shelf.ts';
import { amiss, putAmissAway } from '../state/came-back.ts';
import { saveWhatIsHere } from '../state/copies.ts';
import { reopenClass, store } from '../state/open-class.ts';
import { say } from './wording.ts';

/** Says kindly when this device cannot remember, or when something was lost or could not be read. */
export function Banner() {
  const lost = store.trouble.value;
  return (
    <>
      {lost && !store.inMemory.value && (
        <CopyOffered act={say.banner.tryAgain} does={tryAgain}>
          {lost.message}
        </CopyOffered>
      )}
      {store.inMemory.value && (
        <CopyOffered act={say.banner.tryAgain} does={tryToLeaveMemory}>
          {say.banner.youAreWorkingWithout}
        </CopyOffered>
      )}
      {isAmiss(amiss.value) && (
        <CopyOffered act={say.banner.close} does={putAmissAway}>
          {saidOfAmiss(amiss.value)}
        </CopyOffered>
      )}
      {store.aside.value.length > 0 && (
        <CopyOffered act={say.banner.tryAgain} does={tryAgain}>
          {say.banner.oneThingYouEntered}
        </CopyOffered>
      )}
      {trouble.value === 'refused' && !lost && <Notice>{say.banner.thisBrowserWillNot}</Notice>}
      {trouble.value === 'unreadable' && (
        <Notice
          acts={
            <>
              <button type="button" class="button" onClick={saveCopies}>
                {say.banner.saveTheCopy}
              </button>
              <Plain does={putNoticeAway}>{say.banner.close}</Plain>
            </>
          }
        >
          {say.banner.somethingKept}
        </Notice>
      )}
    </>
  );
}

/** Offers again what could not be kept. */
async function tryAgain(tell: Tell): Promise<void> {
  tell('');
  const outcome = await store.append([]);
  if ('error' in outcome) tell(say.banner.stillNotSaving);
  else await reopenClass();
}

async function tryToLeaveMemory(tell: Tell): Promise<void> {
  tell('');
  const outcome = await store.leaveMemory();
  if ('error' in outcome) tell(say.banner.itStillDoesNot);
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
      ? [say.banner.thisBrowserLostPart(count(putBack, say.banner.oneEntry, say.banner.entries))]
      : []),
    ...(copied > 0
      ? [
          say.banner.theSecondCopy(
            count(copied, say.banner.justOneEntry, say.banner.entries),
            copied === 1 ? say.banner.was : say.banner.were,
          ),
        ]
      : []),
    ...(damaged > 0
      ? [
          say.banner.onThisDeviceCould(
            count(damaged, say.banner.oneRecord, say.banner.records),
            damaged === 1 ? say.banner.was : say.banner.were,
          ),
        ]
      : []),
    ...(twofold > 0
      ? [say.banner.toldInTwoWays(count(twofold, say.banner.oneEntryIs, say.banner.entriesAre))]
      : []),
    say.banner.pleaseCheck,
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
    setSaid('error' in saved ? saved.error.message : say.banner.savedAs(saved.name));
  };
  return (
    <Notice
      acts={
        <>
          <button type="button" class="button" onClick={save}>
            {say.banner.saveACopy}
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
