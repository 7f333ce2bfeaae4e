import { WALK } from '../../wording/help/walk.ts';
import { Said } from './topic-text.tsx';
import { say } from './wording.ts';

/** The way of a newcomer, choice by choice. */
export function Walk() {
  return (
    <>
      <p>{say.walk.fromTheFirstVisit}</p>
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
