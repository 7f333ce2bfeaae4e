import { WALK } from '../../wording/help/walk.ts';
import { Said } from './topic-text.tsx';

/** The way of a newcomer, choice by choice. */
export function Walk() {
  return (
    <>
      <p>
        From the first visit to a page for a family: these choices, and no others, are needed. Leave
        out what you do not want.
      </p>
      <ol class="help-walk">
        {WALK.map(({ goal, choices }) => (
          <li key={goal}>
            <b>{goal}</b>
            <ol>
              {choices.map(({ on, does }) => (
                <li key={does}>
                  <span class="quiet">{on.endsWith('?') ? on : `${on}:`}</span> <Said text={does} />
                </li>
              ))}
            </ol>
          </li>
        ))}
      </ol>
    </>
  );
}
