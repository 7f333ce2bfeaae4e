import { useState } from 'preact/hooks';
import { inStep, sharing } from '../../state/sharing.ts';
import { asideSaid, refusalSaid } from '../../wording/sharing-said.ts';
import { say } from './wording.ts';

/** How far what was recorded has come, and whatever stands in its way, in sentences. */
export function Whereabouts() {
  const state = sharing.value?.state;
  if (!state) return null;
  const { where, why, unsent, isConnected, trouble, isFull, needsPass, aside } = state;
  const reasons = [...new Set(aside.values())];
  return (
    <div role="status">
      <p class="quiet">{saidOf()}</p>
      {trouble && <p class="share-note">{say.whereabouts.whatComes(trouble.message)}</p>}
      {needsPass && <ShareAgain />}
      {isFull && <p class="share-note">{refusalSaid('full')}</p>}
      {reasons.map((reason) => (
        <p key={reason} class="share-note">
          {say.whereabouts.entriesAndCountsNowhere(
            [...aside.values()].filter((each) => each === reason).length,
            asideSaid(reason),
          )}
        </p>
      ))}
    </div>
  );

  function saidOf(): string {
    if (where === 'closed') return refusalSaid(why ?? '');
    if (where === 'everywhere') return say.whereabouts.everythingIs;
    const waiting = unsent === 0 ? '' : say.whereabouts.entriesWait(unsent);
    if (!isConnected) {
      return say.whereabouts.theServerIsOut(waiting);
    }
    return say.whereabouts.catchingUp(waiting);
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
      <p>{say.whereabouts.theServerDoesNot}</p>
      <label>
        {say.whereabouts.schoolPass}
        <input
          type="text"
          value={pass}
          autocomplete="off"
          spellcheck={false}
          onInput={(event) => setPass(event.currentTarget.value)}
        />
      </label>
      <button type="submit" class="button" disabled={pass === ''}>
        {say.whereabouts.sendItAgain}
      </button>
    </form>
  );
}
