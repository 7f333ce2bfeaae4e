import type { ChildId } from '../../../core/ids.ts';
import './calling.css';
import { readerAt } from '../../../core/warm-up/calling.ts';
import type { Running } from '../../../core/warm-up/run-state.ts';
import { absent, present, setAbsent } from '../../state/absent.ts';
import { children, classState } from '../../state/open-class.ts';
import { linkTo } from '../../state/route.ts';
import { callAnother, callChild, callThoseThere, setCalling } from '../../warm-up/acts.ts';
import { say } from './wording.ts';

interface CallingProps {
  readonly now: Running;
  /** She wants to say who reads. */
  readonly onWho: () => void;
}

/** Who reads, when she calls on children: this one, then those, or whom she points at; and who is away today. */
export function Calling({ now: { calling, standing }, onWho }: CallingProps) {
  const all = children.value;
  if (all.length === 0) {
    return (
      <section class="desk-box" aria-label={say.calling.callingOnChildren}>
        <p class="quiet small">
          {say.calling.toCallOnChildren(<a href={linkTo('class')}>{say.calling.class}</a>)}
        </p>
      </section>
    );
  }
  const reader = readerAt(calling, standing.at);
  return (
    <section class="desk-box" aria-label={say.calling.callingOnChildren}>
      <label class="switch">
        <input
          type="checkbox"
          checked={calling.on}
          onChange={(event) => setCalling(event.currentTarget.checked)}
        />
        <span>{say.calling.callOnChildren}</span>
      </label>
      {calling.on && (
        <>
          <p class="reader" role="status">
            {reader === null ? say.calling.nobodyIsHere : nameOf(reader)}
          </p>
          {calling.upcoming.length > 0 && (
            <fieldset class="quiet upcoming" aria-label={say.calling.readsNext}>
              {say.calling.afterThat}{' '}
              {calling.upcoming.slice(0, 2).map((child) => (
                <button key={child} type="button" onClick={() => callChild(child)}>
                  {nameOf(child)}
                </button>
              ))}
            </fieldset>
          )}
          <button type="button" class="button small-button" onClick={callAnother}>
            {say.calling.anotherChild(<kbd class="key">N</kbd>)}
          </button>
        </>
      )}
      <button type="button" class="button small-button" aria-haspopup="dialog" onClick={onWho}>
        {say.calling.whoReads(<kbd class="key">W</kbd>)}
      </button>
      {calling.on && (
        <details class="here">
          <summary>{say.calling.ofHereToday(present.value.length, all.length)}</summary>
          <p class="quiet small">{say.calling.uncheckWhoIsAway}</p>
          <div class="here-names">
            {all.map(({ id, name }) => (
              <label key={id}>
                <input
                  type="checkbox"
                  aria-label={say.calling.isHere(name)}
                  checked={!absent.value.has(id)}
                  onChange={() => {
                    setAbsent(id, !absent.peek().has(id));
                    callThoseThere();
                  }}
                />
                <span>{name}</span>
              </label>
            ))}
          </div>
        </details>
      )}
    </section>
  );
}

function nameOf(child: ChildId): string {
  return classState.value.children.get(child)?.name ?? say.calling.aChild;
}
