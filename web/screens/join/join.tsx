import './join.css';
import { useEffect, useState } from 'preact/hooks';
import { nameOfClass } from '../../state/class-list.ts';
import { classState } from '../../state/open-class.ts';
import { asked, linkTo, takeAsked } from '../../state/route.ts';
import { join, secretTyped } from '../../state/sharing-acts.ts';
import { wall } from '../../state/wall.ts';
import { refusalSaid } from '../../wording/sharing-said.ts';
import { Knock } from './knock.tsx';
import { say } from './wording.ts';

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
        <h1>{say.join.comingIn}</h1>
        <p class="quiet" role="status">
          {say.join.theClass}
        </p>
      </div>
    );
  }
  if (stands === 'in') {
    return (
      <div class="join-page">
        <h1>{say.join.youAreIn(nameOfClass(classState.value))}</h1>
        <p class="quiet" role="status">
          {say.join.itStays}
        </p>
        <p class="buttons">
          <a class="button next" href={linkTo('today')}>
            {say.join.todaysWarmUp}
          </a>
          <a class="button" href={linkTo('stage', 'follow')}>
            {say.join.beTheStage}
          </a>
        </p>
      </div>
    );
  }
  return (
    <div class="join-page">
      <h1>{say.join.joinAClass}</h1>
      <p class="quiet">{say.join.onADevice}</p>
      <form
        class="join-form"
        onSubmit={async (event) => {
          event.preventDefault();
          const read = await secretTyped(typed);
          if (read !== null) await come(read);
          else setSaid(say.join.thatIsNoCode);
        }}
      >
        <label>
          {say.join.theCode}
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
          {say.join.comeIn}
        </button>
      </form>
      <p role="status" class={said === '' ? undefined : 'join-note'}>
        {said}
      </p>
      <Knock onIn={() => wall.peek() === null && setStands('in')} />
    </div>
  );
}
