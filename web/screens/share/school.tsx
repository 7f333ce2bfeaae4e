import { useEffect, useState } from 'preact/hooks';
import type { Member } from '../../../core/sharing/rights.ts';
import { fingerprintOf } from '../../device/far/school-key.ts';
import { type OfferedKey, offeredKey } from '../../state/school-key.ts';
import { sharing } from '../../state/sharing.ts';
import { letSchoolIn, remove } from '../../state/sharing-acts.ts';
import { refusalSaid } from '../../wording/sharing-said.ts';
import { say } from './wording.ts';

/** Whether the school can open the class: said to all who are in it, asked of its owner. */
export function School({ isOwner }: { readonly isOwner: boolean }) {
  const [offered, setOffered] = useState<OfferedKey | null>(null);
  useEffect(() => {
    if (isOwner) void offeredKey().then(setOffered);
  }, [isOwner]);
  const members = sharing.value?.rights?.members;
  const inside = [...(members?.values() ?? [])].find(
    (one) => one.role === 'school' && !one.removed,
  );
  if (inside) return <CanOpen school={inside} isOwner={isOwner} />;
  // A key that was taken back never comes in again; the school makes another.
  if (!isOwner || offered === null || members?.has(offered.id)) return null;
  return <Asks offered={offered} />;
}

function CanOpen({ school, isOwner }: { readonly school: Member; readonly isOwner: boolean }) {
  const [fingerprint, setFingerprint] = useState('');
  const [said, setSaid] = useState('');
  useEffect(() => void fingerprintOf(school).then(setFingerprint), [school.sign, school.box]);
  return (
    <section class="share-school not-printed" aria-labelledby="school-title">
      <h2 id="school-title">{say.school.yourSchoolCanOpen}</h2>
      <p>{say.school.withTheKey}</p>
      <p>{say.school.fingerprint}</p>
      <p class="share-letters">{fingerprint}</p>
      {isOwner && (
        <p class="buttons">
          <button
            type="button"
            class="button"
            onClick={async () => {
              const done = await remove(school.id);
              if ('why' in done) setSaid(refusalSaid(done.why));
            }}
          >
            {say.school.takeItBack}
          </button>
          <span class="quiet">{say.school.whatIsNoted}</span>
        </p>
      )}
      <p role="status">{said}</p>
    </section>
  );
}

function Asks({ offered }: { readonly offered: OfferedKey }) {
  const [isBusy, setBusy] = useState(false);
  const [said, setSaid] = useState('');
  return (
    <section class="share-school not-printed" aria-labelledby="school-title">
      <h2 id="school-title">{say.school.mayYourSchool}</h2>
      <p>{say.school.yourSchoolAsks}</p>
      <p>{say.school.askForTheFingerprint}</p>
      <p class="share-letters">{offered.fingerprint}</p>
      <p class="buttons">
        <button
          type="button"
          class="button"
          disabled={isBusy}
          onClick={async () => {
            setBusy(true);
            const done = await letSchoolIn(offered.key, offered.id);
            setBusy(false);
            if ('why' in done) setSaid(refusalSaid(done.why));
          }}
        >
          {say.school.letItOpen}
        </button>
      </p>
      <p role="status">{said}</p>
    </section>
  );
}
