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

/** A sheet to print and lock away: it opens the class when every device is lost. */
export function Recovery({ name }: { readonly name: string }) {
  const [secret, setSecret] = useState<string | null>(null);
  const [said, setSaid] = useState('');
  return (
    <section class="share-recovery" aria-labelledby="sheet-title">
      <h2 id="sheet-title" class="not-printed">
        If every device is lost
      </h2>
      <p class="not-printed">
        No one can reset anything here, not even the school. Print this sheet once and lock it away:
        whoever has it can open the class.
      </p>
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
            Make a recovery sheet
          </button>
        </p>
      ) : (
        <>
          <div class="share-sheet">
            <h2>To open “{name}” again</h2>
            <p>
              Made {dateSaid(today(), '')}. Good once. Point the camera of a new device here, or
              open {HERE} there, choose “Join a class” and type the letters.
            </p>
            <QrCode text={linkFor(secret)} name="Recovery code" />
            <p class="share-letters">{makeTyped(secret)}</p>
            <p>
              Keep it like a key to the classroom. When it is lost, take it back and make another.
            </p>
          </div>
          <p class="buttons not-printed">
            <button type="button" class="button" onClick={() => print()}>
              Print the sheet
            </button>
            <button type="button" class="button plain" onClick={() => setSecret(null)}>
              Done
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
      {out.length === 1 ? 'One sheet is out.' : `${out.length} sheets are out.`}
      <button
        type="button"
        class="button"
        onClick={async () => {
          for (const { id } of out) {
            const done = await remove(id);
            if ('why' in done) return onSaid(refusalSaid(done.why));
          }
          onSaid('What was printed before opens nothing any more.');
        }}
      >
        {out.length === 1 ? 'Take it back' : 'Take them back'}
      </button>
    </p>
  );
}

/** In milliseconds; no code that is meant for now is good for so long. */
const A_YEAR = 365 * 24 * 60 * 60 * 1000;
