import './child.css';
import { useMemo } from 'preact/hooks';
import type { MapCell } from '../../../core/facts/class-map.ts';
import { PLACES } from '../../../core/language/correspondence.ts';
import { HABITS } from '../../../core/language/taught.ts';
import { countConfusions } from '../../../core/learners/confusions.ts';
import { type Day, makeDay } from '../../../core/learners/day.ts';
import { type Due, dueOf } from '../../../core/learners/due.ts';
import {
  type Estimate,
  estimateHabit,
  estimatePlace,
  type Who,
} from '../../../core/learners/estimate.ts';
import { DUE_SAID } from '../../../core/learners/review-reason.ts';
import type { Child } from '../../../core/log/class-state.ts';
import { groupOf } from '../../../core/log/roster-changes.ts';
import { Card } from '../../controls/card.tsx';
import { ConfusionTable } from '../../controls/confusion-table.tsx';
import { Sign } from '../../controls/sign.tsx';
import { SoundedCard } from '../../controls/sounded-card.tsx';
import { choose } from '../../state/check-choice.ts';
import { mapFor, task, taughtToChild } from '../../state/class-now.ts';
import { today } from '../../state/day.ts';
import { everyone } from '../../state/everyone.ts';
import { knowledge, modelDay, observations } from '../../state/knowledge.ts';
import { linkToView } from '../../state/known-view.ts';
import { classState, nameOfGroup } from '../../state/open-class.ts';
import { linkTo } from '../../state/route.ts';
import { cardName, habitNames } from '../../wording/card-name.ts';
import { counted } from '../../wording/counted.ts';
import { whenSaid } from '../../wording/day-name.ts';
import { dueSaid } from '../../wording/due-said.ts';
import { shareSaid } from '../../wording/said.ts';
import { Growth } from './growth.tsx';
import { Skill } from './skill.tsx';
import { WideTable } from './wide-table.tsx';
import { WordCounts } from './word-counts.tsx';

/** One child: how it grew, each sound with how sure that is and when it is due, and what it confuses. */
export function ChildView({
  child,
  card,
}: {
  readonly child: Child;
  readonly card: string | null;
}) {
  const cards = useMemo(() => taughtToChild(child), [child, classState.value]);
  const who = useMemo((): Who => ({ of: 'child', id: child.id }), [child.id]);
  const row = mapFor([who], cards)[0];
  const own = observations.value.filter((one) => one.child === child.id);
  const confusions = countConfusions(own.filter((one) => one.task === task.value));
  return (
    <article class="child-view" aria-labelledby="child-title">
      <header class="child-head">
        <h2 id="child-title">{child.name}</h2>
        <Neighbors child={child} />
      </header>
      <div class="map-tools not-printed">
        <Skill />
      </div>
      <WordCounts row={row} />
      {own.length === 0 && (
        <p class="known-hint">
          Nothing was noted of {child.name} alone yet. Call on {child.name} in a warm-up, or take a
          short check, and it shows here.
        </p>
      )}
      <section class="part" aria-labelledby="child-growth">
        <h3 id="child-growth">Growth</h3>
        <Growth key={`${child.id} ${card} ${task.value}`} who={who} cards={cards} card={card} />
      </section>
      <div class="child-columns">
        <section class="part" aria-labelledby="child-sounds">
          <h3 id="child-sounds">Sounds, and when to see them again</h3>
          <Sounds who={who} cells={row?.cells ?? []} />
        </section>
        <div class="child-column">
          <section class="part" aria-labelledby="child-confusions">
            <h3 id="child-confusions">What was heard instead</h3>
            {confusions.length === 0 ? (
              <p class="quiet">Nothing was noted.</p>
            ) : (
              <ConfusionTable confusions={confusions} />
            )}
          </section>
          {task.value === 'read' && <Places who={who} />}
        </div>
      </div>
    </article>
  );
}

/** Which group the child is in, and the ways to the children before and after. */
function Neighbors({ child }: { readonly child: Child }) {
  const state = classState.value;
  const all = everyone.value;
  const at = all.findIndex(({ id }) => id === child.id);
  const group = groupOf(state, child);
  const link = (other: Child | undefined, sign: string) =>
    other && (
      <a href={linkToView({ of: 'child', id: other.id, card: null })}>
        {sign} {other.name}
      </a>
    );
  return (
    <p class="child-neighbors">
      <span class="quiet">{group ? nameOfGroup(group, state) : 'in no small group'}</span>
      <span class="not-printed">
        <a href={linkTo('check')} onClick={() => choose({ child: child.id })}>
          Short check
        </a>
        {link(all[at - 1], '←')} {link(all[at + 1], '→')}
      </span>
    </p>
  );
}

/** Each sound that was read, what needs it most first; the others in a row. */
/** When a card should come back; why then on pointing at it. */
function DueCell({ due, now }: { readonly due: Due | null; readonly now: Day }) {
  if (due === null) return <td />;
  return <td title={`because ${DUE_SAID[due.because]}`}>{dueSaid(due.day, now)}</td>;
}

function Sounds({ who, cells }: { readonly who: Who; readonly cells: readonly MapCell[] }) {
  const now = modelDay();
  const order = ['shaky', 'growing', 'secure'];
  const seen = cells
    .filter(({ word }) => word !== 'not yet seen')
    .sort(
      (one, other) =>
        order.indexOf(one.word) - order.indexOf(other.word) || one.estimate.p - other.estimate.p,
    );
  const unseen = cells.filter(({ word }) => word === 'not yet seen');
  return (
    <>
      {seen.length > 0 && (
        <WideTable name="Sounds, as a table">
          <table class="figures">
            <thead>
              <tr>
                <th scope="col">Card</th>
                <th scope="col">Known</th>
                <th scope="col">Right</th>
                <th scope="col">Likely range</th>
                <th scope="col">Readings</th>
                <th scope="col">Last</th>
                <th scope="col">Due</th>
              </tr>
            </thead>
            <tbody>
              {seen.map(({ card, word, estimate }) => (
                <tr key={card}>
                  <th scope="row">
                    <SoundedCard id={card} />
                  </th>
                  <td>
                    <Sign word={word} /> {word}
                  </td>
                  <td>{shareSaid(estimate.p)}</td>
                  <td>{rangeSaid(estimate)}</td>
                  <td>{estimate.n}</td>
                  <td>{estimate.last === null ? '' : whenSaid(makeDay(estimate.last), today())}</td>
                  <DueCell due={dueOf(knowledge.value[task.value], who, card)} now={now} />
                </tr>
              ))}
            </tbody>
          </table>
        </WideTable>
      )}
      {unseen.length > 0 && (
        <div class="child-unseen">
          <p class="quiet">
            Taught, and not yet seen of this child: {counted(unseen.length, 'sound')}
          </p>
          <ul>
            {unseen.map(({ card }) => (
              <li key={card} title={cardName(card)}>
                <span class="for-ears">{cardName(card)}</span>
                <Card id={card} />
              </li>
            ))}
          </ul>
        </div>
      )}
    </>
  );
}

const placeNames = { beginning: 'at the beginning', middle: 'in the middle', ending: 'at the end' };

/** How a sound of middling strength is read in each place, and under each habit that was met. */
function Places({ who }: { readonly who: Who }) {
  const { read } = knowledge.value;
  const rows: readonly (readonly [string, Estimate])[] = [
    ...PLACES.map((place) => [placeNames[place], estimatePlace(read, who, place)] as const),
    ...HABITS.map((habit) => [habitNames[habit], estimateHabit(read, who, habit)] as const),
  ];
  const seen = rows.filter(([, { n }]) => n > 0);
  if (seen.length === 0) return null;
  return (
    <section class="part" aria-labelledby="child-places">
      <h3 id="child-places">Where in a word</h3>
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">Place</th>
            <th scope="col">Right</th>
            <th scope="col">Likely range</th>
            <th scope="col">Readings</th>
          </tr>
        </thead>
        <tbody>
          {seen.map(([name, estimate]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>{shareSaid(estimate.p)}</td>
              <td>{rangeSaid(estimate)}</td>
              <td>{estimate.n}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function rangeSaid({ low, high }: Estimate): string {
  return `${Math.round(low * 100)}–${shareSaid(high)}`;
}
