import { useMemo } from 'preact/hooks';
import { type Missed, whoMissed } from '../../../core/facts/who-missed.ts';
import { type Child, WHOLE_CLASS } from '../../../core/log/class-state.ts';
import { Card } from '../../controls/card.tsx';
import { PracticeNote } from '../../controls/check-note.tsx';
import { mapFor, members, nameOf, taughtToChild } from '../../state/class-now.ts';
import { today } from '../../state/day.ts';
import { everyone } from '../../state/everyone.ts';
import { knowledge } from '../../state/knowledge.ts';
import { classState, group, groupName } from '../../state/open-class.ts';
import { thresholds } from '../../state/thresholds.ts';
import { cardName } from '../../wording/card-name.ts';
import { dayName } from '../../wording/day-name.ts';

/** Which children missed which card lately: a list to teach small groups from. */
export function WhoLacks() {
  const children = group.value.id === WHOLE_CLASS ? everyone.value : members.value;
  const known = knowledge.value;
  const missed = useMemo(
    () => missedBy(children),
    [children, known, classState.value, thresholds.value],
  );
  return (
    <article class="paper-page">
      <header>
        <h2>
          {classState.value.name && `${classState.value.name}, `}
          {groupName.value}
        </h2>
        <p class="quiet">Who needs what, {dayName(today(), today())}</p>
      </header>
      {missed.length === 0 ? (
        <p>Nobody missed anything in the last three readings of a card.</p>
      ) : (
        <table class="who-lacks">
          <thead>
            <tr>
              <th scope="col">Card</th>
              <th scope="col">Missed lately by</th>
              <th scope="col">Read alone by</th>
            </tr>
          </thead>
          <tbody>
            {missed.map((one) => (
              <tr key={one.card}>
                <th scope="row">
                  <span class="for-ears">{cardName(one.card)}</span>
                  <Card id={one.card} />
                </th>
                <td>
                  {one.by
                    .map((each) => `${nameOf(each.who)} (${each.missed} of ${each.asked})`)
                    .join(', ')}
                </td>
                <td>
                  {one.readers} of {children.length}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <p class="small">
        Missed lately: in one or more of the last three times the child read the card alone. Cards
        the most children missed come first.
      </p>
      <PracticeNote />
    </article>
  );
}

function missedBy(children: readonly Child[]): readonly Missed[] {
  const taught = [...new Set(children.flatMap(taughtToChild))];
  return whoMissed(
    mapFor(
      children.map(({ id }) => ({ of: 'child', id }) as const),
      taught,
      'read',
    ),
  );
}
