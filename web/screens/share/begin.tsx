import { useState } from 'preact/hooks';
import { guessDeviceName } from '../../device/device-name.ts';
import { shareClass } from '../../state/sharing-acts.ts';
import { refusalSaid } from '../../wording/sharing-said.ts';
import { say } from './wording.ts';

/** Before a class is shared: what it means, and the school's pass. Nothing is asked of any server before. */
export function Begin({ name }: { readonly name: string }) {
  const [pass, setPass] = useState('');
  const [device, setDevice] = useState(guessDeviceName);
  const [isBusy, setBusy] = useState(false);
  const [said, setSaid] = useState('');
  return (
    <div class="share-page">
      <header>
        <h1>
          {say.begin.betweenDevices(name === '' ? say.begin.shareThisClass : say.begin.share(name))}
        </h1>
        <p class="quiet share-lead">{say.begin.planOnYourLaptop}</p>
      </header>
      <ul class="share-means">
        <li>{say.begin.namesMarksAndNotes(<b>{say.begin.sealedBeforeItLeaves}</b>)}</li>
        <li>{say.begin.noAccountsAndNo(<b>{say.begin.onlyWhomYouLet}</b>)}</li>
        <li>{say.begin.eachDeviceKeeps(<b>{say.begin.stillYoursWithout}</b>)}</li>
      </ul>
      <form
        class="share-begin"
        onSubmit={async (event) => {
          event.preventDefault();
          setBusy(true);
          setSaid('');
          const done = await shareClass(pass, device.trim());
          setBusy(false);
          if ('why' in done) setSaid(refusalSaid(done.why));
        }}
      >
        <label>
          {say.begin.schoolPass}
          <input
            type="text"
            value={pass}
            required
            placeholder={say.begin.xxxxXxxxXxxxXxxx}
            autocomplete="off"
            autocapitalize="characters"
            spellcheck={false}
            onInput={(event) => setPass(event.currentTarget.value)}
          />
        </label>
        <label>
          {say.begin.whatToCall}
          <input
            type="text"
            value={device}
            required
            maxLength={40}
            autocomplete="off"
            onInput={(event) => setDevice(event.currentTarget.value)}
          />
        </label>
        <button type="submit" class="button next" disabled={isBusy}>
          {isBusy ? say.begin.sharing : say.begin.shareThisClass}
        </button>
      </form>
      <p role="status" class={said === '' ? undefined : 'share-note'}>
        {said}
      </p>
      <p class="quiet small">{say.begin.thePassIsGiven}</p>
    </div>
  );
}
