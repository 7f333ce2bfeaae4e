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
import { say } from './wording.ts';

/** Where everything is kept, whether for good, and copies: out to a file and in from one. */
export function SafeKeeping() {
  useEffect(() => void lookWhetherKept(), []);
  const kept = keptForGood.value;
  const copied = lastCopyOf(classState.value.id);
  return (
    <section class="class-section" aria-labelledby="safe-title">
      <h2 id="safe-title">{say.safeKeeping.keepItSafe}</h2>
      <div class="safe-where">
        <p>
          {sharedAs.value === null
            ? say.safeKeeping.everythingYouEnter
            : say.safeKeeping.everythingYouEnterIsKept}{' '}
          <span aria-live="polite">{saidOfKeeping[kept]}</span>
        </p>
        {kept !== 'granted' && (
          <button type="button" class="button" onClick={askToKeep}>
            {say.safeKeeping.askTheBrowser}
          </button>
        )}
      </div>
      <p>
        <a href={linkTo('share')}>
          {sharedAs.value === null
            ? say.safeKeeping.shareThisClassBetween
            : say.safeKeeping.devicesAndPeople}
        </a>{' '}
        · <a href={linkTo('join')}>{say.safeKeeping.joinAClass}</a>
      </p>
      {copied !== null && <p class="quiet">{copyAgeSaid(copied, today())}</p>}
      <div class="safe-copies">
        <SaveCopy />
        <BringCopy />
      </div>
      <SetAside />
      <p class="quiet small">{say.safeKeeping.whatYouMayKeep}</p>
    </section>
  );
}

const saidOfKeeping: Readonly<Record<typeof keptForGood.value, string>> = {
  granted: say.safeKeeping.theBrowserHasPromised,
  denied: say.safeKeeping.theBrowserDoesNot,
  unknown: say.safeKeeping.theBrowserCannotSay,
  'not-asked': say.safeKeeping.theBrowserMayClear,
};
