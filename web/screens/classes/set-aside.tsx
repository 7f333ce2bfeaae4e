import { useEffect, useState } from 'preact/hooks';
import { amiss } from '../../state/came-back.ts';
import { store } from '../../state/open-class.ts';
import {
  type AsidePiece,
  lookAtAside,
  saveAside,
  setAside,
  throwSetAsideAway,
} from '../../state/set-aside.ts';

/** What could not be read and was set aside, with its reason; nothing while there is none. */
export function SetAside() {
  const [asks, setAsks] = useState(false);
  const [said, setSaid] = useState('');
  // What is found amiss has been set aside by then.
  useEffect(() => void lookAtAside(), [amiss.value, store.aside.value]);
  const pieces = setAside.value;
  const throwAway = async () => {
    const isDone = await throwSetAsideAway();
    setAsks(false);
    setSaid(isDone ? '' : 'That did not work. Close all other windows of Sweepline and try again.');
  };
  if (pieces.length === 0) return null;
  return (
    <section class="class-note set-aside" aria-labelledby="aside-title">
      <h3 id="aside-title">Set aside</h3>
      <ul>
        {REASONS.map(({ reason, one, more, why }) => {
          const { length } = pieces.filter((piece) => piece.reason === reason);
          if (length === 0) return null;
          return (
            <li key={reason}>
              <b>{length === 1 ? one : `${length.toLocaleString('en-US')} ${more}`}</b> {why}
            </li>
          );
        })}
      </ul>
      <p class="buttons">
        <button type="button" class="button" onClick={saveAside}>
          Save what was set aside
        </button>
        {asks ? (
          <>
            <button type="button" class="button stop" onClick={throwAway}>
              Throw it away for good
            </button>
            <button type="button" class="button plain" onClick={() => setAsks(false)}>
              Keep it
            </button>
          </>
        ) : (
          <button type="button" class="button plain" onClick={() => setAsks(true)}>
            Throw it away
          </button>
        )}
      </p>
      <p role="status" class="small">
        {asks
          ? 'If entries of your class are missing, save it first: someone may be able to read it.'
          : said}
      </p>
    </section>
  );
}

interface Reason {
  readonly reason: AsidePiece['reason'];
  readonly one: string;
  readonly more: string;
  readonly why: string;
}

const REASONS: readonly Reason[] = [
  {
    reason: 'entry',
    one: 'One entry',
    more: 'entries',
    why: 'of a class could not be read: damaged where the browser keeps it. Everything else was kept.',
  },
  {
    reason: 'page',
    one: 'One page',
    more: 'pages',
    why: 'of a class’s record, up to a thousand entries each, could not be read: damaged where the browser keeps it. What could be read of it was kept, and what the second copy had came back.',
  },
  {
    reason: 'sheet',
    one: 'One page',
    more: 'pages',
    why: 'of the second copy could not be read, and was written again from the first.',
  },
  {
    reason: 'remembered',
    one: 'One thing',
    more: 'things',
    why: 'this browser remembers for you, such as an order or a list you typed, could not be read. That began afresh.',
  },
  {
    reason: 'as-text',
    one: 'One entry',
    more: 'entries',
    why: 'could not be kept with the others of a class, and is kept here as text.',
  },
  {
    reason: 'unkeepable',
    one: 'One entry',
    more: 'entries',
    why: 'cannot be kept by this browser. Save it before you close this window.',
  },
];
