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
import { say } from './wording.ts';

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
        <p class="quiet">{say.whoLacks.whoNeedsWhat(dayName(today(), today()))}</p>
      </header>
      {missed.length === 0 ? (
        <p>{say.whoLacks.nobodyMissedAnything}</p>
      ) : (
        <table class="who-lacks">
          <thead>
            <tr>
              <th scope="col">{say.whoLacks.card}</th>
              <th scope="col">{say.whoLacks.missedLatelyBy}</th>
              <th scope="col">{say.whoLacks.readAloneBy}</th>
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
                    .map((each) => say.whoLacks.of(nameOf(each.who), each.missed, each.asked))
                    .join(', ')}
                </td>
                <td>{say.whoLacks.readersOf(one.readers, children.length)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <p class="small">{say.whoLacks.missedLatelyInOne}</p>
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
