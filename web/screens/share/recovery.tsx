import '../../look/print.css';
import { useState } from 'preact/hooks';
import { makeTyped } from '../../../core/sharing/typed-code.ts';
import { QrCode } from '../../controls/qr-code.tsx';
import { today } from '../../state/day.ts';
import { HERE } from '../../state/in-step.ts';
import { linkFor } from '../../state/link-for.ts';
import { sharing } from '../../state/sharing.ts';
import { makeRecovery, remove } from '../../state/sharing-acts.ts';
import { dateSaid } from '../../wording/day-name.ts';
import { refusalSaid } from '../../wording/sharing-said.ts';
import { say } from './wording.ts';

/** A sheet to print and lock away: it opens the class when every device is lost. */
export function Recovery({ name }: { readonly name: string }) {
  const [secret, setSecret] = useState<string | null>(null);
  const [said, setSaid] = useState('');
  return (
    <section class="share-recovery" aria-labelledby="sheet-title">
      <h2 id="sheet-title" class="not-printed">
        {say.recovery.ifEveryDevice}
      </h2>
      <p class="not-printed">{say.recovery.whenEveryDeviceIsGone}</p>
      {secret === null && <SheetsOut onSaid={setSaid} />}
      {secret === null ? (
        <p class="buttons not-printed">
          <button
            type="button"
            class="button"
            onClick={async () => {
              const made = await makeRecovery();
              if ('why' in made) setSaid(refusalSaid(made.why));
              else setSecret(made.secret);
            }}
          >
            {say.recovery.makeARecoverySheet}
          </button>
        </p>
      ) : (
        <>
          <div class="share-sheet">
            <h2>{say.recovery.toOpenAgain(name)}</h2>
            <p>{say.recovery.madeGoodOncePoint(dateSaid(today(), ''), HERE)}</p>
            <QrCode text={linkFor(secret)} name={say.recovery.recoveryCode} />
            <p class="share-letters">{makeTyped(secret)}</p>
            <p>{say.recovery.keepItLike}</p>
          </div>
          <p class="buttons not-printed">
            <button type="button" class="button" onClick={() => print()}>
              {say.recovery.printTheSheet}
            </button>
            <button type="button" class="button plain" onClick={() => setSecret(null)}>
              {say.recovery.done}
            </button>
          </p>
        </>
      )}
      <p role="status" class="not-printed">
        {said}
      </p>
    </section>
  );
}

/** The sheets that were made and not used: each can be taken back, when it is lost. */
function SheetsOut({ onSaid }: { readonly onSaid: (said: string) => void }) {
  const invitations = [...(sharing.value?.rights?.invitations.values() ?? [])];
  const out = invitations.filter(({ spent, until }) => !spent && until - Date.now() > A_YEAR);
  if (out.length === 0) return null;
  return (
    <p class="buttons not-printed">
      {out.length === 1 ? say.recovery.oneSheetIsOut : say.recovery.sheetsAreOut(out.length)}
      <button
        type="button"
        class="button"
        onClick={async () => {
          for (const { id } of out) {
            const done = await remove(id);
            if ('why' in done) return onSaid(refusalSaid(done.why));
          }
          onSaid(say.recovery.whatWasPrintedBefore);
        }}
      >
        {out.length === 1 ? say.recovery.takeItBack : say.recovery.takeThemBack}
      </button>
    </p>
  );
}

/** In milliseconds; no code that is meant for now is good for so long. */
const A_YEAR = 365 * 24 * 60 * 60 * 1000;
