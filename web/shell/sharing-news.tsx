import { useState } from 'preact/hooks';
import { clear, cleared, isStranded } from '../state/cleared.ts';
import { saveWhatIsHere } from '../state/copies.ts';
import { newcomers, tellOf } from '../state/newcomers.ts';
import { classState } from '../state/open-class.ts';
import { linkTo } from '../state/route.ts';
import { type Sharing, sharing } from '../state/sharing.ts';
import { say } from './wording.ts';

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
            {say.sharingNews.hasLeftThisDevice(
              cleared.value.name,
              cleared.value.why === 'gone'
                ? say.sharingNews.itIsSharedNo
                : say.sharingNews.itWasRemoved,
            )}
          </p>
          <button
            type="button"
            class="button plain"
            onClick={() => {
              cleared.value = null;
            }}
          >
            {say.sharingNews.close}
          </button>
        </div>
      )}
    </>
  );
}

function Came() {
  const fresh = newcomers.value;
  if (fresh.length === 0) return null;
  const names = fresh.map(({ by, role }) => {
    if (role === 'wall') return say.sharingNews.aWall;
    if (role === 'school') return say.sharingNews.theSchoolsKey;
    return classState.value.devices.get(by) ?? say.sharingNews.aNewDevice;
  });
  return (
    <div class="banner" role="status">
      <p>{say.sharingNews.cameIntoThisClass(names.join(', '))}</p>
      <a class="button" href={linkTo('share')}>
        {say.sharingNews.seeWho}
      </a>
      <button type="button" class="button plain" onClick={() => tellOf(fresh.map(({ id }) => id))}>
        {say.sharingNews.gotIt}
      </button>
    </div>
  );
}

function Stranded({ now }: { readonly now: Sharing }) {
  const [said, setSaid] = useState('');
  return (
    <div class="banner" role="status">
      <p>{say.sharingNews.thisDeviceIsNo(now.state.unsent)}</p>
      <button
        type="button"
        class="button"
        onClick={async () => {
          const saved = await saveWhatIsHere();
          setSaid('error' in saved ? saved.error.message : say.sharingNews.savedAs(saved.name));
        }}
      >
        {say.sharingNews.saveACopy}
      </button>
      <button type="button" class="button plain" onClick={() => void clear(now)}>
        {say.sharingNews.clearIt}
      </button>
      <p>{said}</p>
    </div>
  );
}
