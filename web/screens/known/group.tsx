import type { CardId } from '../../../core/language/card-id.ts';
import type { WhoChild } from '../../../core/learners/estimate.ts';
import './group.css';
import type { MapRow } from '../../../core/facts/class-map.ts';
import { countConfusions } from '../../../core/learners/confusions.ts';
import { Card } from '../../controls/card.tsx';
import { ConfusionTable } from '../../controls/confusion-table.tsx';
import { WideTable } from '../../controls/wide-table.tsx';
import { members, rowsFor, task, taughtCards } from '../../state/class-now.ts';
import { observations } from '../../state/knowledge.ts';
import { group, groupName } from '../../state/open-class.ts';
import { cardName } from '../../wording/card-name.ts';
import { needsFor, rowsOf } from './group-rows.ts';
import { Needs } from './needs.tsx';
import { Ready } from './ready.tsx';
import { Skill } from './skill.tsx';
import { WordCounts } from './word-counts.tsx';
import { say } from './wording.ts';
import { Year } from './year.tsx';

/** The group at work: what its children have in common, what they need next, and what they confuse. */
export function GroupView() {
  const all = members.value;
  const { groups, children } = rowsFor(taughtCards.value);
  const ids = new Set(all.map(({ id }) => id));
  const confusions = countConfusions(
    observations.value.filter(
      (one) =>
        one.task === task.value &&
        (one.child === null ? one.groups[0] === group.value.id : ids.has(one.child)),
    ),
  );
  const held = cardsIn(children, (words) =>
    words.every((word) => word === 'secure' || word === 'growing'),
  );
  const apart = cardsIn(
    children,
    (words) => words.includes('shaky') && words.some((word) => word === 'secure'),
  );
  return (
    <article class="group-view" aria-labelledby="group-title">
      <header class="child-head">
        <h2 id="group-title">{groupName.value}</h2>
        <p class="quiet">{say.group.children(all.length)}</p>
      </header>
      <div class="map-tools not-printed">
        <Skill />
      </div>
      <WordCounts cells={groups[0]?.cells ?? []} />
      <div class="group-columns">
        <section class="part" aria-labelledby="group-needs">
          <h3 id="group-needs">{say.group.whatTheyNeedNext}</h3>
          <Needs needs={needsFor(rowsOf(all))} />
        </section>
        <section class="part" aria-labelledby="group-common">
          <h3 id="group-common">{say.group.whatTheyHave}</h3>
          <Held title={say.group.secureOrGrowing} cards={held} none={say.group.noSoundYet} />
          <Held
            title={say.group.secureForSomeShaky}
            cards={apart}
            none={say.group.noSoundPartsThem}
          />
        </section>
      </div>
      <div class="group-columns">
        <Ready />
        <Year />
      </div>
      <section class="part" aria-labelledby="group-confusions">
        <h3 id="group-confusions">{say.group.whatWasHeardInstead}</h3>
        {confusions.length === 0 ? (
          <p class="quiet">{say.group.nothingWasNoted}</p>
        ) : (
          <WideTable name={say.group.whatWasHeardInsteadAsATable}>
            <ConfusionTable confusions={confusions} named />
          </WideTable>
        )}
      </section>
    </article>
  );
}

function Held({
  title,
  cards,
  none,
}: {
  readonly title: string;
  readonly cards: readonly CardId[];
  readonly none: string;
}) {
  return (
    <>
      <h4>{title}</h4>
      {cards.length === 0 ? (
        <p class="quiet">{none}</p>
      ) : (
        <ul class="card-row">
          {cards.map((id) => (
            <li key={id} title={cardName(id)}>
              <span class="for-ears">{cardName(id)}</span>
              <Card id={id} />
            </li>
          ))}
        </ul>
      )}
    </>
  );
}

/** The cards of which the children's words are as asked. */
function cardsIn(
  rows: readonly MapRow<WhoChild>[],
  isAsked: (words: readonly string[]) => boolean,
): readonly CardId[] {
  const cards = rows[0]?.cells ?? [];
  return cards.flatMap(({ card }, at) =>
    isAsked(rows.flatMap((row) => row.cells[at]?.word ?? [])) ? card : [],
  );
}
