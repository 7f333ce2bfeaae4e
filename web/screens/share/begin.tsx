import { useState } from 'preact/hooks';
import { guessDeviceName } from '../../device/device-name.ts';
import { shareClass } from '../../state/sharing-acts.ts';
import { refusalSaid } from '../../wording/sharing-said.ts';

/** Before a class is shared: what it means, and the school's pass. Nothing is asked of any server before. */
export function Begin({ name }: { readonly name: string }) {
  const [pass, setPass] = useState('');
  const [device, setDevice] = useState(guessDeviceName);
  const [isBusy, setBusy] = useState(false);
  const [said, setSaid] = useState('');
  return (
    <div class="share-page">
      <header>
        <h1>{name === '' ? 'Share this class' : `Share “${name}”`} between devices</h1>
        <p class="quiet share-lead">
          Plan on your laptop, project from the classroom computer, mark on your phone, let an aide
          take a group: one class, the same everywhere, offline too.
        </p>
      </header>
      <ul class="share-means">
        <li>
          <b>Sealed before it leaves.</b> Names, marks and notes are locked on this device. The
          server passes them on and cannot read them.
        </li>
        <li>
          <b>Only whom you let in.</b> No accounts and no passwords. You see every device, and
          remove it with one press.
        </li>
        <li>
          <b>Still yours without a network.</b> Each device keeps the whole class and catches up by
          itself.
        </li>
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
          School pass
          <input
            type="text"
            value={pass}
            required
            placeholder="XXXX-XXXX-XXXX-XXXX"
            autocomplete="off"
            autocapitalize="characters"
            spellcheck={false}
            onInput={(event) => setPass(event.currentTarget.value)}
          />
        </label>
        <label>
          What to call this device
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
          {isBusy ? 'Sharing …' : 'Share this class'}
        </button>
      </form>
      <p role="status" class={said === '' ? undefined : 'share-note'}>
        {said}
      </p>
      <p class="quiet small">
        The pass is given once by whoever looks after computers at your school, and is not needed
        again. Whether you may share what you note about children is for your school’s rules to say.
      </p>
    </div>
  );
}
