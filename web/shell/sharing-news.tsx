import { useState } from 'preact/hooks';
import { clear, cleared, isStranded } from '../state/cleared.ts';
import { saveWhatIsHere } from '../state/copies.ts';
import { newcomers, tellOf } from '../state/newcomers.ts';
import { classState } from '../state/open-class.ts';
import { linkTo } from '../state/route.ts';
import { type Sharing, sharing } from '../state/sharing.ts';
import { counted } from '../wording/counted.ts';

/** What she should know of a shared class, on each of her devices until she has seen it: who came, what left. */
export function SharingNews() {
  const now = sharing.value;
  return (
    <>
      <Came />
      {now && isStranded(now) && <Stranded now={now} />}
      {cleared.value && (
        <div class="banner" role="status">
          <p>
            “{cleared.value.name}” has left this device:{' '}
            {cleared.value.why === 'gone'
              ? 'it is shared no more.'
              : 'it was removed from the class.'}{' '}
            Nothing of it is kept here.
          </p>
          <button
            type="button"
            class="button plain"
            onClick={() => {
              cleared.value = null;
            }}
          >
            Close
          </button>
        </div>
      )}
    </>
  );
}

function Came() {
  const fresh = newcomers.value;
  if (fresh.length === 0) return null;
  const names = fresh.map(({ by, role }) =>
    role === 'wall' ? 'A wall' : (classState.value.devices.get(by) ?? 'A new device'),
  );
  return (
    <div class="banner" role="status">
      <p>{names.join(', ')} came into this class.</p>
      <a class="button" href={linkTo('share')}>
        See who is in it
      </a>
      <button type="button" class="button plain" onClick={() => tellOf(fresh.map(({ id }) => id))}>
        Got it
      </button>
    </div>
  );
}

function Stranded({ now }: { readonly now: Sharing }) {
  const [said, setSaid] = useState('');
  return (
    <div class="banner" role="status">
      <p>
        This device is no longer in the class, and {counted(now.state.unsent, 'entry', 'entries')}{' '}
        made on it never reached the others. Save a copy for whoever leads the class, then clear it
        from here.
      </p>
      <button
        type="button"
        class="button"
        onClick={async () => {
          const saved = await saveWhatIsHere();
          setSaid('error' in saved ? saved.error.message : `Saved as ${saved.name}.`);
        }}
      >
        Save a copy
      </button>
      <button type="button" class="button plain" onClick={() => void clear(now)}>
        Clear it from this device
      </button>
      <p>{said}</p>
    </div>
  );
}
