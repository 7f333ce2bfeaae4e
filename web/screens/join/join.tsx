import './join.css';
import { useEffect, useState } from 'preact/hooks';
import { nameOfClass } from '../../state/class-list.ts';
import { classState } from '../../state/open-class.ts';
import { asked, linkTo, takeAsked } from '../../state/route.ts';
import { join, secretTyped } from '../../state/sharing-acts.ts';
import { wall } from '../../state/wall.ts';
import { refusalSaid } from '../../wording/sharing-said.ts';
import { Knock } from './knock.tsx';

/** Where a new device comes into a class: by the address that its camera read, or by what is typed. */
export function JoinPage() {
  const [typed, setTyped] = useState('');
  const [stands, setStands] = useState<'asks' | 'comes' | 'in'>('asks');
  const [said, setSaid] = useState('');
  const come = async (secret: string) => {
    setStands('comes');
    setSaid('');
    const done = await join(secret);
    if (wall.peek() !== null) return;
    setStands('why' in done ? 'asks' : 'in');
    if ('why' in done) setSaid(refusalSaid(done.why));
  };
  const secret = asked.value;
  useEffect(() => {
    if (secret === '') return;
    takeAsked();
    void come(secret);
  }, [secret]);
  if (stands === 'comes') {
    return (
      <div class="join-page">
        <h1>Coming in …</h1>
        <p class="quiet" role="status">
          The class is on its way to this device. This takes a few seconds.
        </p>
      </div>
    );
  }
  if (stands === 'in') {
    return (
      <div class="join-page">
        <h1>You are in {nameOfClass(classState.value)}</h1>
        <p class="quiet" role="status">
          It stays on this device, offline too, and catches up by itself.
        </p>
        <p class="buttons">
          <a class="button next" href={linkTo('today')}>
            Today’s warm-up
          </a>
          <a class="button" href={linkTo('stage', 'follow')}>
            Be the stage
          </a>
        </p>
      </div>
    );
  }
  return (
    <div class="join-page">
      <h1>Join a class</h1>
      <p class="quiet">
        On a device that is in the class, open Children, then Devices, and choose what this one may
        do. Point this device’s camera at the code there, or type what stands beside it.
      </p>
      <form
        class="join-form"
        onSubmit={async (event) => {
          event.preventDefault();
          const read = await secretTyped(typed);
          if (read !== null) await come(read);
          else setSaid('That is no code of Sweepline yet. Look at it again, letter by letter.');
        }}
      >
        <label>
          The code
          <input
            type="text"
            value={typed}
            autocomplete="off"
            autocapitalize="characters"
            spellcheck={false}
            onInput={(event) => setTyped(event.currentTarget.value)}
          />
        </label>
        <button type="submit" class="button next" disabled={typed.trim() === ''}>
          Come in
        </button>
      </form>
      <p role="status" class={said === '' ? undefined : 'join-note'}>
        {said}
      </p>
      <Knock onIn={() => wall.peek() === null && setStands('in')} />
    </div>
  );
}
