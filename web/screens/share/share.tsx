import './share.css';
import { nameOfClass } from '../../state/class-list.ts';
import { classState, isLookedAt, sharedAs } from '../../state/open-class.ts';
import { sharing } from '../../state/sharing.ts';
import { AddDevice } from './add-device.tsx';
import { Begin } from './begin.tsx';
import { Devices } from './devices.tsx';
import { Recovery } from './recovery.tsx';
import { School } from './school.tsx';
import { Stop } from './stop.tsx';
import { Whereabouts } from './whereabouts.tsx';
import { say } from './wording.ts';

/** The class on several devices: to begin, to let devices and colleagues in, to remove them, to stop. */
export function SharePage() {
  const now = sharing.value;
  if (isLookedAt.value) {
    return (
      <div class="share-page">
        <h1>{say.share.devicesAndPeople}</h1>
        <p>{say.share.hereYouOpen}</p>
      </div>
    );
  }
  const name = nameOfClass(classState.value);
  if (sharedAs.value === null) return <Begin name={classState.value.name} />;
  const me = now?.rights?.members.get(now.device);
  const isOwner = me?.role === 'owner' && !me.removed;
  return (
    <div class="share-page">
      <header class="not-printed">
        <h1>{say.share.devicesAndPeople}</h1>
        <Whereabouts />
      </header>
      {now?.rights && isOwner && <AddDevice />}
      {now?.rights && <Devices name={classState.value.name} isOwner={isOwner} />}
      {now?.rights && <School isOwner={isOwner} />}
      {now?.rights && isOwner && <Recovery name={name} />}
      {now && <Stop isOwner={isOwner} name={name} />}
      {!now && <p class="quiet">{say.share.oneMoment}</p>}
    </div>
  );
}
