import { useState } from 'preact/hooks';
import { isIn, type Member } from '../../../core/sharing/rights.ts';
import { today } from '../../state/day.ts';
import { classState } from '../../state/open-class.ts';
import { sharing } from '../../state/sharing.ts';
import { nameDevice, remove } from '../../state/sharing-acts.ts';
import { whenSaid } from '../../wording/day-name.ts';
import { ROLE_SAID, refusalSaid } from '../../wording/sharing-said.ts';
import { timeName } from '../../wording/time-name.ts';
import { say } from './wording.ts';

interface DevicesProps {
  readonly name: string;
  readonly isOwner: boolean;
}

/** Every device that is in the class, what it may do, when it was heard of last; and a way to remove it. */
export function Devices({ name, isOwner }: DevicesProps) {
  const now = sharing.value;
  const members = [...(now?.rights?.members.values() ?? [])];
  const there = members.filter((one) => one.role !== 'school' && isIn(one, Date.now()));
  return (
    <section class="share-devices not-printed" aria-labelledby="devices-title">
      <h2 id="devices-title">{say.devices.inNow(name === '' ? say.devices.thisClass : name)}</h2>
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
  const fallback = isMe
    ? say.devices.thisDevice
    : member.role === 'wall'
      ? say.devices.theWall
      : say.devices.aDevice;
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
              aria-label={say.devices.rename(name)}
              onClick={() => setRenaming(name)}
            >
              {say.devices.renameAlone}
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
            aria-label={say.devices.itsName}
            value={renaming}
            maxLength={40}
            onInput={(event) => setRenaming(event.currentTarget.value)}
          />
          <button type="submit" class="button">
            {say.devices.keep}
          </button>
        </form>
      )}
      <span>{ROLE_SAID[member.role].name}</span>
      <span class="quiet">{isHere ? say.devices.inUseNow : lastSeenSaid(at, today())}</span>
      <span class="share-device-act">
        {isMe && <span class="quiet small">{say.devices.youAreHere}</span>}
        {!isMe && isOwner && !asking && (
          <button
            type="button"
            class="button"
            aria-label={say.devices.remove(name)}
            onClick={() => setAsking(true)}
          >
            {say.devices.removeAlone}
          </button>
        )}
      </span>
      {asking && (
        <div class="share-ask">
          <p>{say.devices.hearsAndSendsNothing(name)}</p>
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
              {say.devices.remove(name)}
            </button>
            <button type="button" class="button plain" onClick={() => setAsking(false)}>
              {say.devices.keepIt}
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
  return say.devices.seen(whenSaid(seen, day), timeName(at));
}
