import { useEffect } from 'preact/hooks';
import { today } from '../../state/day.ts';
import { lastCopyOf } from '../../state/last-copy.ts';
import { classState, sharedAs } from '../../state/open-class.ts';
import { linkTo } from '../../state/route.ts';
import { copyAgeSaid } from '../../wording/copy-age.ts';
import { BringCopy } from './bring-copy.tsx';
import { askToKeep, keptForGood, lookWhetherKept } from './kept-for-good.ts';
import { SaveCopy } from './save-copy.tsx';
import { SetAside } from './set-aside.tsx';

/** Where everything is kept, whether for good, and copies: out to a file and in from one. */
export function SafeKeeping() {
  useEffect(() => void lookWhetherKept(), []);
  const kept = keptForGood.value;
  const copied = lastCopyOf(classState.value.id);
  return (
    <section class="class-section" aria-labelledby="safe-title">
      <h2 id="safe-title">Keep it safe</h2>
      <div class="safe-where">
        <p>
          {sharedAs.value === null
            ? 'Everything you enter is kept in this browser on this device alone, and goes nowhere by itself.'
            : 'Everything you enter is kept in this browser, and sealed with the devices you let in.'}{' '}
          <span aria-live="polite">{saidOfKeeping[kept]}</span>
        </p>
        {kept !== 'granted' && (
          <button type="button" class="button" onClick={askToKeep}>
            Ask the browser to keep it for good
          </button>
        )}
      </div>
      <p>
        <a href={linkTo('share')}>
          {sharedAs.value === null ? 'Share this class between devices' : 'Devices and people'}
        </a>{' '}
        · <a href={linkTo('join')}>Join a class from another device</a>
      </p>
      {copied !== null && <p class="quiet">{copyAgeSaid(copied, today())}</p>}
      <div class="safe-copies">
        <SaveCopy />
        <BringCopy />
      </div>
      <SetAside />
      <p class="quiet small">
        What you may keep and share about children is for your school’s rules and laws such as
        FERPA, COPPA or the GDPR to say; if in doubt, ask whoever looks after them at your school.
      </p>
    </section>
  );
}

const saidOfKeeping: Readonly<Record<typeof keptForGood.value, string>> = {
  granted: 'The browser has promised to keep it until someone clears it by hand.',
  denied:
    'The browser does not promise to keep it: it may clear it when the device runs short of room. Save a copy now and then.',
  unknown: 'The browser cannot say whether it keeps it for good. Save a copy now and then.',
  'not-asked': 'The browser may clear it when the device runs short of room.',
};
