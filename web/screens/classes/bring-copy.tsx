import { useRef, useState } from 'preact/hooks';
import { Progress, useUnderWay } from '../../controls/under-way.tsx';
import { type Brought, bringIn } from './bring-in.ts';
import { BroughtIn } from './brought-in.tsx';
import { say } from './wording.ts';

/** Takes a file in that was saved before, here or on another device. */
export function BringCopy() {
  const [locked, setLocked] = useState<string>();
  const [outcome, setOutcome] = useState<Brought>();
  const [passphrase, setPassphrase] = useState('');
  const under = useUnderWay();
  const busy = under.share !== null;
  const [recall, setRecall] = useState<() => unknown>();
  const file = useRef<HTMLInputElement>(null);

  const take = (text: string, secret: string | null, recalls = false) =>
    under.run(async (pace, onKeeping) => {
      show(text, secret, await bringIn(text, secret, { pace, onKeeping, recalls }));
    });

  const show = (text: string, secret: string | null, brought: Brought) => {
    const isDeleted = 'error' in brought && brought.error.code === 'deleted';
    setRecall(() => (isDeleted ? () => take(text, secret, true) : undefined));
    const asks = 'error' in brought && ['locked', 'wrong-passphrase'].includes(brought.error.code);
    setLocked(asks ? text : undefined);
    setOutcome(brought);
    if (!asks) setPassphrase('');
  };

  const onFile = async () => {
    const chosen = file.current?.files?.[0];
    if (!chosen) return;
    setPassphrase('');
    try {
      await take(await chosen.text(), null);
    } catch {
      setLocked(undefined);
      setOutcome({ error: { code: 'unreadable', message: unreadable } });
    }
    // So that choosing the same file again is a choice.
    if (file.current) file.current.value = '';
  };

  return (
    <div class="safe-copy">
      <h3>{say.bringCopy.bringACopyIn}</h3>
      <p class="quiet small">{say.bringCopy.whatIsNew}</p>
      <p>
        <label class="button">
          {say.bringCopy.chooseAFile}
          <input
            ref={file}
            class="for-ears"
            type="file"
            accept=".jsonl,.ndjson,.json,.txt,application/x-ndjson,application/json,text/plain"
            onChange={onFile}
          />
        </label>
      </p>
      {locked !== undefined && (
        <form
          onSubmit={(event) => {
            event.preventDefault();
            void take(locked, passphrase);
          }}
        >
          <label>
            {say.bringCopy.theFilesPassphrase}
            <input
              type="password"
              value={passphrase}
              autocomplete="off"
              onInput={(event) => setPassphrase(event.currentTarget.value)}
            />
          </label>
          <button type="submit" class="button" disabled={busy || passphrase === ''}>
            {say.bringCopy.openTheFile}
          </button>
        </form>
      )}
      <Progress under={under} says={say.bringCopy.bringingItIn} />
      <div role="status">
        {!busy && outcome && <BroughtIn outcome={outcome} />}
        {!busy && recall && (
          <button type="button" class="button" onClick={recall}>
            {say.bringCopy.bringTheDeletedClass}
          </button>
        )}
      </div>
    </div>
  );
}

const unreadable = say.bringCopy.theBrowserCouldNot;
