import { useMemo } from 'preact/hooks';
import { countWords } from '../../../core/facts/class-map.ts';
import { checksOf } from '../../../core/log/check-record.ts';
import { type Child, WHOLE_CLASS } from '../../../core/log/class-state.ts';
import { gapsOf } from '../../../core/sequence/gaps.ts';
import { Card } from '../../controls/card.tsx';
import { PracticeNote } from '../../controls/check-note.tsx';
import { Sign } from '../../controls/sign.tsx';
import { members } from '../../state/class-now.ts';
import { today } from '../../state/day.ts';
import { everyone } from '../../state/everyone.ts';
import { knowledge } from '../../state/knowledge.ts';
import { cellsOf, neediestFirst, sentenceOn } from '../../state/of-child.ts';
import { classState, group, groupName } from '../../state/open-class.ts';
import { progress, taught } from '../../state/progress.ts';
import { scoreOf } from '../../state/scored.ts';
import { settings } from '../../state/settings.ts';
import { thresholds } from '../../state/thresholds.ts';
import { cardName, itemShort } from '../../wording/card-name.ts';
import { kindNames } from '../../wording/check-names.ts';
import { dayName, whenSaid } from '../../wording/day-name.ts';
import { shareSaid } from '../../wording/said.ts';
import { HerLine } from './her-line.tsx';
import { missedSaid } from './spelling.tsx';
import { say } from './wording.ts';

/** The group at work for whoever teaches it next: where it stands, and what each child needs first. */
export function Handover() {
  const { id } = group.value;
  const { sequence, upTo } = progress.value;
  const children = id === WHOLE_CLASS ? everyone.value : members.value;
  const last = sequence.steps[upTo - 1];
  const gaps = gapsOf(progress.value);
  const next = sequence.steps[upTo];
  return (
    <article class="paper-page">
      <header>
        <h2>
          {classState.value.name && `${classState.value.name}, `}
          {groupName.value}
        </h2>
        <p class="quiet">{say.handover.forTheNextTeacher(dayName(today(), today()))}</p>
      </header>
      <p class="page-lead">
        {upTo === 0
          ? say.handover.nothingWasTaught
          : say.handover.taughtUpToStep(
              upTo,
              sequence.steps.length,
              last?.title ?? '',
              taught.value.correspondences.size,
              taught.value.irregularWords.size,
            )}{' '}
        {gaps.length > 0 && say.handover.notYetTaught(gaps.map(({ title }) => title).join('; '))}
        {next && say.handover.nextComes(next.items.map(itemShort).join(', '))}
      </p>
      {children.length === 0 ? (
        <p class="quiet">{say.handover.nobodyIs}</p>
      ) : (
        <table class="handover-table">
          <thead>
            <tr>
              <th scope="col">{say.handover.child}</th>
              <th scope="col">
                <Sign word="secure" /> {say.handover.secure}
              </th>
              <th scope="col">
                <Sign word="growing" /> {say.handover.growing}
              </th>
              <th scope="col">
                <Sign word="shaky" /> {say.handover.shaky}
              </th>
              <th scope="col">
                <Sign word="not yet seen" /> {say.handover.notSeen}
              </th>
              <th scope="col">{say.handover.practiceFirst}</th>
              <th scope="col">{say.handover.spellingMissed}</th>
              <th scope="col">{say.handover.lastCheck}</th>
            </tr>
          </thead>
          <tbody>
            {children.map((child) => (
              <Row key={child.id} child={child} />
            ))}
          </tbody>
        </table>
      )}
      <HerLine page="handover" about={id} placeholder={say.handover.whatTheNextTeacher} />
      <p class="small">{say.handover.shakyMissedInTwo(shareSaid(thresholds.value.shaky))}</p>
      <PracticeNote />
    </article>
  );
}

/** So many cards are named for each child. */
const MOST_FIRST = 5;

function Row({ child }: { readonly child: Child }) {
  const known = knowledge.value;
  const state = classState.value;
  const { cells, sentence } = useMemo(
    () => ({ cells: cellsOf(child, 'read').taught, sentence: sentenceOn(child) }),
    [child, known, state, settings.value],
  );
  const counts = countWords(cells);
  const first = neediestFirst(cells)
    .filter(({ word }) => word === 'shaky')
    .slice(0, MOST_FIRST);
  return (
    <tr>
      <th scope="row">
        {child.name}
        <span class="in-a-sentence">{sentence}</span>
      </th>
      <td data-name="secure">{counts.secure}</td>
      <td data-name="growing">{counts.growing}</td>
      <td data-name="shaky">{counts.shaky}</td>
      <td data-name="not seen">{counts['not yet seen']}</td>
      <td class="first">
        {first.map(({ card }) => (
          <span key={card}>
            <span class="for-ears">{cardName(card)}</span>
            <Card id={card} />{' '}
          </span>
        ))}
      </td>
      <td>{missedSaid(child.id)}</td>
      <td>{lastCheck(child)}</td>
    </tr>
  );
}

function lastCheck({ id }: Child): string {
  const last = checksOf(classState.value, id).findLast(({ ended }) => ended !== null);
  if (!last) return '';
  const { right, asked } = scoreOf(last);
  return say.handover.of(kindNames[last.form.kind], right, asked, whenSaid(last.day, today()));
}
