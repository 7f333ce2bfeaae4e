import { useState } from 'preact/hooks';
import { leave, stopSharing } from '../../state/sharing-acts.ts';
import { refusalSaid } from '../../wording/sharing-said.ts';

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
      <h2 id="stop-title">Stop</h2>
      <p class="buttons">
        <button type="button" class="button plain" onClick={() => setAsking('leave')}>
          Leave with this device
        </button>
        {isOwner && (
          <button type="button" class="button plain" onClick={() => setAsking('stop')}>
            Stop sharing for everyone
          </button>
        )}
      </p>
      {asking === 'leave' && (
        <div class="share-ask">
          <p>
            This device goes on with the class as it is now, alone. The others go on together. To
            come back, it has to be let in again.
          </p>
          <p class="buttons">
            <button type="button" class="button" onClick={() => void leave()}>
              Leave
            </button>
            <button type="button" class="button plain" onClick={() => setAsking(null)}>
              Stay
            </button>
          </p>
        </div>
      )}
      {asking === 'stop' && (
        <div class="share-ask">
          <p>
            “{name}” stays on this device. It leaves the server at once, and every other device as
            soon as that is next online. This cannot be taken back.
          </p>
          <p class="buttons">
            <button
              type="button"
              class="button stop"
              onClick={async () => {
                const done = await stopSharing();
                if ('why' in done) setSaid(refusalSaid(done.why));
              }}
            >
              Stop sharing
            </button>
            <button type="button" class="button plain" onClick={() => setAsking(null)}>
              Go on sharing
            </button>
          </p>
        </div>
      )}
      <p role="status">{said}</p>
    </section>
  );
}
