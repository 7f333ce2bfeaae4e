import { useState } from 'preact/hooks';
import { inStep, sharing } from '../../state/sharing.ts';
import { counted } from '../../wording/counted.ts';
import { asideSaid, refusalSaid } from '../../wording/sharing-said.ts';

/** How far what was recorded has come, and whatever stands in its way, in sentences. */
export function Whereabouts() {
  const state = sharing.value?.state;
  if (!state) return null;
  const { where, why, unsent, isConnected, trouble, isFull, needsPass, aside } = state;
  const reasons = [...new Set(aside.values())];
  return (
    <div role="status">
      <p class="quiet">{saidOf()}</p>
      {trouble && (
        <p class="share-note">
          What comes from your other devices cannot be kept on this one. {trouble.message}
        </p>
      )}
      {needsPass && <ShareAgain />}
      {isFull && <p class="share-note">{refusalSaid('full')}</p>}
      {reasons.map((reason) => (
        <p key={reason} class="share-note">
          {counted(
            [...aside.values()].filter((each) => each === reason).length,
            'entry',
            'entries',
          )}{' '}
          {asideSaid(reason)}, and counts nowhere but where it was made. Everything else goes on.
        </p>
      ))}
    </div>
  );

  function saidOf(): string {
    if (where === 'closed') return refusalSaid(why ?? '');
    if (where === 'everywhere') return 'Everything is with your other devices.';
    const waiting =
      unsent === 0 ? '' : ` ${counted(unsent, 'entry waits', 'entries wait')} to be sent.`;
    if (!isConnected) {
      return `The server is out of reach just now. Go on as always; this device catches up by itself.${waiting}`;
    }
    return `Catching up with your other devices …${waiting}`;
  }
}

/** The server has lost the class, as one that was set up again has: a pass lets it begin there again. */
function ShareAgain() {
  const [pass, setPass] = useState('');
  return (
    <form
      class="share-begin share-note"
      onSubmit={async (event) => {
        event.preventDefault();
        (await inStep.peek()?.lead())?.shareAgain(pass);
      }}
    >
      <p>
        The server does not have this class any more. All of it is here; with a school pass it goes
        there again.
      </p>
      <label>
        School pass
        <input
          type="text"
          value={pass}
          autocomplete="off"
          spellcheck={false}
          onInput={(event) => setPass(event.currentTarget.value)}
        />
      </label>
      <button type="submit" class="button" disabled={pass === ''}>
        Send it again
      </button>
    </form>
  );
}
