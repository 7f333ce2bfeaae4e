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
import { say } from './wording.ts';

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
    setSaid(isDone ? '' : say.setAside.thatDidNotWork);
  };
  if (pieces.length === 0) return null;
  return (
    <section class="class-note set-aside" aria-labelledby="aside-title">
      <h3 id="aside-title">{say.setAside.setAside}</h3>
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
          {say.setAside.saveWhatWasSet}
        </button>
        {asks ? (
          <>
            <button type="button" class="button stop" onClick={throwAway}>
              {say.setAside.throwItAway}
            </button>
            <button type="button" class="button plain" onClick={() => setAsks(false)}>
              {say.setAside.keepIt}
            </button>
          </>
        ) : (
          <button type="button" class="button plain" onClick={() => setAsks(true)}>
            {say.setAside.throwAway}
          </button>
        )}
      </p>
      <p role="status" class="small">
        {asks ? say.setAside.ifEntries : said}
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
    one: say.setAside.oneEntry,
    more: say.setAside.entries,
    why: say.setAside.ofAClassCould,
  },
  {
    reason: 'page',
    one: say.setAside.onePage,
    more: say.setAside.pages,
    why: say.setAside.ofAClasssRecord,
  },
  {
    reason: 'sheet',
    one: say.setAside.onePage,
    more: say.setAside.pages,
    why: say.setAside.ofTheSecondCopy,
  },
  {
    reason: 'remembered',
    one: say.setAside.oneThing,
    more: say.setAside.things,
    why: say.setAside.thisBrowserRemembers,
  },
  {
    reason: 'as-text',
    one: say.setAside.oneEntry,
    more: say.setAside.entries,
    why: say.setAside.couldNotBeKept,
  },
  {
    reason: 'unkeepable',
    one: say.setAside.oneEntry,
    more: say.setAside.entries,
    why: say.setAside.cannotBeKept,
  },
];
