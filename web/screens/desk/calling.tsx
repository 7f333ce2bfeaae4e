import type { ChildId } from '../../../core/ids.ts';
import './calling.css';
import { readerAt } from '../../../core/warm-up/calling.ts';
import type { Running } from '../../../core/warm-up/run-state.ts';
import { absent, present, setAbsent } from '../../state/absent.ts';
import { children, classState } from '../../state/open-class.ts';
import { linkTo } from '../../state/route.ts';
import { callAnother, callChild, callThoseThere, setCalling } from '../../warm-up/acts.ts';

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
      <section class="desk-box" aria-label="Calling on children">
        <p class="quiet small">
          To call on children, add their first names under <a href={linkTo('class')}>Class</a>.
        </p>
      </section>
    );
  }
  const reader = readerAt(calling, standing.at);
  return (
    <section class="desk-box" aria-label="Calling on children">
      <label class="switch">
        <input
          type="checkbox"
          checked={calling.on}
          onChange={(event) => setCalling(event.currentTarget.checked)}
        />
        <span>Call on children</span>
      </label>
      {calling.on && (
        <>
          <p class="reader" role="status">
            {reader === null ? 'nobody is here' : nameOf(reader)}
          </p>
          {calling.upcoming.length > 0 && (
            <fieldset class="quiet upcoming" aria-label="Reads next">
              then{' '}
              {calling.upcoming.slice(0, 2).map((child) => (
                <button key={child} type="button" onClick={() => callChild(child)}>
                  {nameOf(child)}
                </button>
              ))}
            </fieldset>
          )}
          <button type="button" class="button small-button" onClick={callAnother}>
            Another child <kbd class="key">N</kbd>
          </button>
        </>
      )}
      <button type="button" class="button small-button" aria-haspopup="dialog" onClick={onWho}>
        Who reads … <kbd class="key">W</kbd>
      </button>
      {calling.on && (
        <details class="here">
          <summary>
            {present.value.length} of {all.length} here today
          </summary>
          <p class="quiet small">Uncheck who is away today. No one who is away gets called on.</p>
          <div class="here-names">
            {all.map(({ id, name }) => (
              <label key={id}>
                <input
                  type="checkbox"
                  aria-label={`${name} is here`}
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
  return classState.value.children.get(child)?.name ?? 'a child';
}
