import { useState } from 'preact/hooks';
import { eventsIn } from '../../../core/log/class-events.ts';
import type { Child } from '../../../core/log/class-state.ts';
import { idsToErase } from '../../../core/log/erased.ts';
import { eraseChild, mayErase } from '../../state/erase-child.ts';
import { classState, sharedAs } from '../../state/open-class.ts';

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
        aria-label={`Delete everything about ${name}`}
        onClick={() => setAsking(true)}
      >
        Delete everything …
      </button>
    );
  }
  const notes = idsToErase(eventsIn(classState.value), child.id).length - 1;
  return (
    <div class="erase-child">
      <p>
        The name, every mark, check, and paper of {name} go, for good
        {notes > 0 &&
          `, and so ${notes === 1 ? 'does one line' : `do ${notes} lines`} you wrote that ${notes === 1 ? 'names' : 'name'} ${name}`}
        . Nobody can bring them back.
        {sharedAs.value !== null && ' They leave your other devices and the server, too.'}
      </p>
      <p>Copies you saved as files still have them: throw those away yourself.</p>
      <p class="buttons">
        <button
          type="button"
          class="button stop"
          onClick={async () => {
            setSaid('One moment …');
            const failed = await eraseChild(child);
            if (failed === null) return;
            const { refusalSaid } = await import('../../wording/sharing-said.ts');
            setSaid('why' in failed ? refusalSaid(failed.why) : failed.message);
          }}
        >
          Delete {name} for good
        </button>
        <button type="button" class="button plain" onClick={() => setAsking(false)}>
          Keep
        </button>
      </p>
      <p role="status">{said}</p>
    </div>
  );
}
