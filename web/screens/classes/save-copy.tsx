import { useState } from 'preact/hooks';
import { Progress, useUnderWay } from '../../controls/under-way.tsx';
import { classList } from '../../state/class-list.ts';
import { type Saved, saveCopy } from '../../state/copies.ts';
import { classState } from '../../state/open-class.ts';
import { say } from './wording.ts';

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
    setSaid(say.saveCopy.readBackAndCompared(outcome.name));
    setPassphrase('');
    setAgain('');
  };
  return (
    <form
      class="safe-copy"
      aria-label={say.saveCopy.saveACopy}
      onSubmit={(event) => {
        event.preventDefault();
        if (isReady) void save();
      }}
    >
      <h3>{say.saveCopy.saveACopy}</h3>
      <p class="quiet small">{say.saveCopy.oneFileWithEverything}</p>
      {list.length > 1 && (
        <div>
          <label class="option">
            <input type="radio" name="what" checked={!all} onChange={() => setAll(false)} />
            <span>{say.saveCopy.thisClass}</span>
          </label>
          <label class="option">
            <input type="radio" name="what" checked={all} onChange={() => setAll(true)} />
            <span>{say.saveCopy.allClasses(list.length)}</span>
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
          {chosen.length > 1 ? say.saveCopy.sayInTheFiles : say.saveCopy.putTheClasssName}
        </span>
      </label>
      <label class="option">
        <input
          type="checkbox"
          checked={locked}
          onChange={(event) => setLocked(event.currentTarget.checked)}
        />
        <span>{say.saveCopy.lockIt}</span>
      </label>
      {locked && (
        <>
          <p class="class-note">{say.saveCopy.whoeverHasTheFile}</p>
          <Secret label={say.saveCopy.passphrase} value={passphrase} onValue={setPassphrase} />
          {passphrase !== '' && <p class="small">{strengthOf(passphrase)}</p>}
          <Secret label={say.saveCopy.theSameAgain} value={again} onValue={setAgain} />
        </>
      )}
      <p>
        <button type="submit" class="button" disabled={!isReady}>
          {say.saveCopy.saveACopy}
        </button>
      </p>
      <Progress under={under} says={say.saveCopy.savingAndComparing} />
      <p role="status" class="small">
        {differs ? say.saveCopy.theTwoAreNot : said}
        {list.length === 0 && say.saveCopy.thereIsNothing}
      </p>
    </form>
  );
}

/** Letters that a passphrase has at least. */
const LEAST = 10;

/** How long it would hold, said by its length, which counts most (NIST SP 800-63B, 5.1.1). */
function strengthOf(passphrase: string): string {
  if (passphrase.length < LEAST) {
    return say.saveCopy.tooShortYetTake(LEAST);
  }
  return passphrase.length < 16 ? say.saveCopy.fairOneMoreWord : say.saveCopy.strong;
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
