import { useState } from 'preact/hooks';
import { eventsIn } from '../../../core/log/class-events.ts';
import type { Child } from '../../../core/log/class-state.ts';
import { idsToErase } from '../../../core/log/erased.ts';
import { eraseChild, mayErase } from '../../state/erase-child.ts';
import { classState, sharedAs } from '../../state/open-class.ts';
import { say } from './wording.ts';

/** Deletes everything about a child for good, after it was asked once more; nothing where that is not hers to do. */
export function EraseChild({ child }: { readonly child: Child }) {
  const [asking, setAsking] = useState(false);
  const [said, setSaid] = useState('');
  const { name } = child;
  if (!mayErase.value) return null;
  if (!asking) {
    return (
      <button
        type="button"
        class="button plain small"
        aria-label={say.eraseChild.deleteEverythingAbout(name)}
        onClick={() => setAsking(true)}
      >
        {say.eraseChild.deleteEverything}
      </button>
    );
  }
  const notes = idsToErase(eventsIn(classState.value), child.id).length - 1;
  return (
    <div class="erase-child">
      <p>
        {say.eraseChild.theNameEveryMark(
          name,
          notes > 0 &&
            say.eraseChild.andSoYouWrote(
              notes === 1 ? say.eraseChild.doesOneLine : say.eraseChild.doLines(notes),
              notes === 1 ? say.eraseChild.names : say.eraseChild.name,
              name,
            ),
        )}
        {sharedAs.value !== null && say.eraseChild.theyLeaveYourOther}
      </p>
      <p>{say.eraseChild.copiesYouSaved}</p>
      <p class="buttons">
        <button
          type="button"
          class="button stop"
          onClick={async () => {
            setSaid(say.eraseChild.oneMoment);
            const failed = await eraseChild(child);
            if (failed === null) return;
            const { refusalSaid } = await import('../../wording/sharing-said.ts');
            setSaid('why' in failed ? refusalSaid(failed.why) : failed.message);
          }}
        >
          {say.eraseChild.deleteForGood(name)}
        </button>
        <button type="button" class="button plain" onClick={() => setAsking(false)}>
          {say.eraseChild.keep}
        </button>
      </p>
      <p role="status">{said}</p>
    </div>
  );
}
