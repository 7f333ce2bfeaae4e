import { useState } from 'preact/hooks';
import { leave, stopSharing } from '../../state/sharing-acts.ts';
import { refusalSaid } from '../../wording/sharing-said.ts';
import { say } from './wording.ts';

interface StopProps {
  readonly name: string;
  readonly isOwner: boolean;
}

/** Ways to end it: for this device, or for all. */
export function Stop({ name, isOwner }: StopProps) {
  const [asking, setAsking] = useState<'leave' | 'stop' | null>(null);
  const [said, setSaid] = useState('');
  return (
    <section class="share-stop not-printed" aria-labelledby="stop-title">
      <h2 id="stop-title">{say.stop.stop}</h2>
      <p class="buttons">
        <button type="button" class="button plain" onClick={() => setAsking('leave')}>
          {say.stop.leaveWithThisDevice}
        </button>
        {isOwner && (
          <button type="button" class="button plain" onClick={() => setAsking('stop')}>
            {say.stop.stopSharingForEveryone}
          </button>
        )}
      </p>
      {asking === 'leave' && (
        <div class="share-ask">
          <p>{say.stop.thisDeviceGoes}</p>
          <p class="buttons">
            <button type="button" class="button" onClick={() => void leave()}>
              {say.stop.leave}
            </button>
            <button type="button" class="button plain" onClick={() => setAsking(null)}>
              {say.stop.stay}
            </button>
          </p>
        </div>
      )}
      {asking === 'stop' && (
        <div class="share-ask">
          <p>{say.stop.staysOnThisDevice(name)}</p>
          <p class="buttons">
            <button
              type="button"
              class="button stop"
              onClick={async () => {
                const done = await stopSharing();
                if ('why' in done) setSaid(refusalSaid(done.why));
              }}
            >
              {say.stop.stopSharing}
            </button>
            <button type="button" class="button plain" onClick={() => setAsking(null)}>
              {say.stop.goOnSharing}
            </button>
          </p>
        </div>
      )}
      <p role="status">{said}</p>
    </section>
  );
}
