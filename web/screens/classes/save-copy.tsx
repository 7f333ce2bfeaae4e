import { useState } from 'preact/hooks';
import { Progress, useUnderWay } from '../../controls/under-way.tsx';
import { classList } from '../../state/class-list.ts';
import { type Saved, saveCopy } from '../../state/copies.ts';
import { classState } from '../../state/open-class.ts';

/** Saves this class or all of them as one file, with a passphrase if she likes. */
export function SaveCopy() {
  const [all, setAll] = useState(false);
  const [named, setNamed] = useState(false);
  const [locked, setLocked] = useState(false);
  const [passphrase, setPassphrase] = useState('');
  const [again, setAgain] = useState('');
  const [said, setSaid] = useState('');
  const under = useUnderWay();
  const list = classList.value;
  const own = list.filter(({ classId }) => classId === classState.value.id);
  const chosen = all && list.length > 1 ? list : own;
  const differs = locked && again !== '' && again !== passphrase;
  const isReady =
    under.share === null &&
    chosen.length > 0 &&
    (!locked || (passphrase.length >= LEAST && again === passphrase));
  const save = () =>
    under.run(async (pace) => {
      setSaid('');
      show(
        await saveCopy(chosen, { passphrase: locked ? passphrase : null, isNamed: named }, pace),
      );
    });
  const show = (outcome: Saved) => {
    if ('error' in outcome) {
      setSaid(outcome.error.message);
      return;
    }
    setSaid(
      `Read back and compared: everything is in it. Saved as ${outcome.name}, where your browser puts files. Move it to a place your school trusts.`,
    );
    setPassphrase('');
    setAgain('');
  };
  return (
    <form
      class="safe-copy"
      aria-label="Save a copy"
      onSubmit={(event) => {
        event.preventDefault();
        if (isReady) void save();
      }}
    >
      <h3>Save a copy</h3>
      <p class="quiet small">
        One file with everything in it, for another device or for a bad day.
      </p>
      {list.length > 1 && (
        <div>
          <label class="option">
            <input type="radio" name="what" checked={!all} onChange={() => setAll(false)} />
            <span>this class</span>
          </label>
          <label class="option">
            <input type="radio" name="what" checked={all} onChange={() => setAll(true)} />
            <span>all {list.length} classes on this device</span>
          </label>
        </div>
      )}
      <label class="option">
        <input
          type="checkbox"
          checked={named}
          onChange={(event) => setNamed(event.currentTarget.checked)}
        />
        <span>
          {chosen.length > 1
            ? 'Say in the file’s name that it holds all classes'
            : 'Put the class’s name in the file’s name'}
        </span>
      </label>
      <label class="option">
        <input
          type="checkbox"
          checked={locked}
          onChange={(event) => setLocked(event.currentTarget.checked)}
        />
        <span>Lock it with a passphrase</span>
      </label>
      {locked && (
        <>
          <p class="class-note">
            Whoever has the file needs the passphrase to open it. Nobody can recover it, so keep it
            where you will find it.
          </p>
          <Secret label="Passphrase" value={passphrase} onValue={setPassphrase} />
          {passphrase !== '' && <p class="small">{strengthOf(passphrase)}</p>}
          <Secret label="The same again" value={again} onValue={setAgain} />
        </>
      )}
      <p>
        <button type="submit" class="button" disabled={!isReady}>
          Save a copy
        </button>
      </p>
      <Progress under={under} says="Saving and comparing …" />
      <p role="status" class="small">
        {differs ? 'The two are not the same yet.' : said}
        {list.length === 0 && 'There is nothing to save yet.'}
      </p>
    </form>
  );
}

/** Letters that a passphrase has at least. */
const LEAST = 10;

/** How long it would hold, said by its length, which counts most (NIST SP 800-63B, 5.1.1). */
function strengthOf(passphrase: string): string {
  if (passphrase.length < LEAST) {
    return `Too short yet: take ${LEAST} letters or more, best three or four words.`;
  }
  return passphrase.length < 16 ? 'Fair. One more word makes it strong.' : 'Strong.';
}

function Secret({
  label,
  value,
  onValue,
}: {
  readonly label: string;
  readonly value: string;
  readonly onValue: (value: string) => void;
}) {
  return (
    <label>
      {label}
      <input
        type="password"
        value={value}
        autocomplete="new-password"
        onInput={(event) => onValue(event.currentTarget.value)}
      />
    </label>
  );
}
