import { useState } from 'preact/hooks';
import { isIn, type Member } from '../../../core/sharing/rights.ts';
import { today } from '../../state/day.ts';
import { classState } from '../../state/open-class.ts';
import { sharing } from '../../state/sharing.ts';
import { nameDevice, remove } from '../../state/sharing-acts.ts';
import { whenSaid } from '../../wording/day-name.ts';
import { ROLE_SAID, refusalSaid } from '../../wording/sharing-said.ts';
import { timeName } from '../../wording/time-name.ts';

interface DevicesProps {
  readonly name: string;
  readonly isOwner: boolean;
}

/** Every device that is in the class, what it may do, when it was heard of last; and a way to remove it. */
export function Devices({ name, isOwner }: DevicesProps) {
  const now = sharing.value;
  const there = [...(now?.rights?.members.values() ?? [])].filter((one) => isIn(one, Date.now()));
  return (
    <section class="share-devices not-printed" aria-labelledby="devices-title">
      <h2 id="devices-title">In {name === '' ? 'this class' : name} now</h2>
      <ul>
        {there.map((member) => (
          <Device key={member.id} member={member} isOwner={isOwner} />
        ))}
      </ul>
    </section>
  );
}

function Device({ member, isOwner }: { readonly member: Member; readonly isOwner: boolean }) {
  const [asking, setAsking] = useState(false);
  const [renaming, setRenaming] = useState<string | null>(null);
  const [said, setSaid] = useState('');
  const now = sharing.value;
  const isMe = member.id === now?.device;
  const fallback = isMe ? 'This device' : member.role === 'wall' ? 'The wall' : 'A device';
  const name = classState.value.devices.get(member.by) ?? fallback;
  const at = Math.max(now?.seen[member.id] ?? 0, member.since);
  const isHere = isMe || now?.present.includes(member.id) === true;
  return (
    <li>
      {renaming === null ? (
        <b class="share-device-name">
          {name}
          {isOwner && (
            <button
              type="button"
              class="button plain small"
              aria-label={`Rename ${name}`}
              onClick={() => setRenaming(name)}
            >
              rename
            </button>
          )}
        </b>
      ) : (
        <form
          class="share-device-name"
          onSubmit={(event) => {
            event.preventDefault();
            if (renaming.trim() !== '') void nameDevice(member.by, renaming.trim());
            setRenaming(null);
          }}
        >
          <input
            type="text"
            aria-label="Its name"
            value={renaming}
            maxLength={40}
            onInput={(event) => setRenaming(event.currentTarget.value)}
          />
          <button type="submit" class="button">
            Keep
          </button>
        </form>
      )}
      <span>{ROLE_SAID[member.role].name}</span>
      <span class="quiet">{isHere ? 'in use now' : lastSeenSaid(at, today())}</span>
      <span class="share-device-act">
        {isMe && <span class="quiet small">you are here</span>}
        {!isMe && isOwner && !asking && (
          <button
            type="button"
            class="button"
            aria-label={`Remove ${name}`}
            onClick={() => setAsking(true)}
          >
            Remove
          </button>
        )}
      </span>
      {asking && (
        <div class="share-ask">
          <p>
            {name} hears and sends nothing more from now on, and clears the class from itself when
            it is next online. What was marked on it stays with the class.
          </p>
          <p class="buttons">
            <button
              type="button"
              class="button stop"
              onClick={async () => {
                const done = await remove(member.id);
                if ('why' in done) setSaid(refusalSaid(done.why));
                else setAsking(false);
              }}
            >
              Remove {name}
            </button>
            <button type="button" class="button plain" onClick={() => setAsking(false)}>
              Keep it
            </button>
          </p>
          <p role="status">{said}</p>
        </div>
      )}
    </li>
  );
}

/** When a device was heard of last: `seen today, 9:12`. `at` is in milliseconds. */
function lastSeenSaid(at: number, day: string): string {
  const seen = new Date(at).toLocaleDateString('sv-SE');
  return `seen ${whenSaid(seen, day)}, ${timeName(at)}`;
}
