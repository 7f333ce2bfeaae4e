import { type CardId, isSightId } from '../../../core/language/card-id.ts';
import { soundStyle } from '../../state/accent.ts';
import './child.css';
import { useMemo } from 'preact/hooks';
import type { MapCell } from '../../../core/facts/class-map.ts';
import { placeFacts } from '../../../core/facts/place-facts.ts';
import type { Place } from '../../../core/language/correspondence.ts';
import type { Habit } from '../../../core/language/taught.ts';
import { type Day, makeDay } from '../../../core/learners/day.ts';
import { type Due, dueOf } from '../../../core/learners/due.ts';
import type { Who } from '../../../core/learners/estimate.ts';
import { DUE_SAID } from '../../../core/learners/review-reason.ts';
import type { Child } from '../../../core/log/class-state.ts';
import { groupOf } from '../../../core/log/roster-changes.ts';
import { cardsSaid } from '../../../core/story/card-said.ts';
import { Card } from '../../controls/card.tsx';
import { SeenTable } from '../../controls/seen-table.tsx';
import { Sign } from '../../controls/sign.tsx';
import { WideTable } from '../../controls/wide-table.tsx';
import { choose } from '../../state/check-choice.ts';
import { task, taughtToChild } from '../../state/class-now.ts';
import { today } from '../../state/day.ts';
import { everyone } from '../../state/everyone.ts';
import { knowledge, modelDay } from '../../state/knowledge.ts';
import { linkToView } from '../../state/known-view.ts';
import { cellsOf, neediestFirst, sentenceOn } from '../../state/of-child.ts';
import { classState, nameOfGroup } from '../../state/open-class.ts';
import { linkTo } from '../../state/route.ts';
import { isSchool } from '../../state/school-days.ts';
import { cardName, habitNames } from '../../wording/card-name.ts';
import { whenSaid } from '../../wording/day-name.ts';
import { dueSaid } from '../../wording/due-said.ts';
import { Growth } from './growth.tsx';
import { NextSteps } from './next-steps.tsx';
import { Skill } from './skill.tsx';
import { SpellingPanel } from './spelling-panel.tsx';
import { WordCounts } from './word-counts.tsx';
import { say } from './wording.ts';

/** One child: its one sentence, what was seen card by card, what to do next, and how it grew. */
export function ChildView({
  child,
  card,
}: {
  readonly child: Child;
  readonly card: CardId | null;
}) {
  const cards = useMemo(() => taughtToChild(child), [child, classState.value]);
  const who = useMemo((): Who => ({ of: 'child', id: child.id }), [child.id]);
  const { taught, beyond } = cellsOf(child, task.value);
  return (
    <article class="child-view" aria-labelledby="child-title">
      <header class="child-head">
        <h2 id="child-title">{child.name}</h2>
        <Neighbors child={child} />
      </header>
      <p class="child-sentence">{sentenceOn(child)}</p>
      <div class="child-columns">
        <div class="child-column">
          <section class="part" aria-labelledby="child-sounds">
            <div class="child-sounds-head">
              <h3 id="child-sounds">
                {task.value === 'read' ? say.child.readingAlone : say.child.spellingAlone}
              </h3>
              <WordCounts cells={taught} />
              <span class="not-printed">
                <Skill />
              </span>
            </div>
            <Sounds child={child} who={who} taught={taught} beyond={beyond} />
          </section>
        </div>
        <div class="child-column">
          {task.value === 'read' && <NextSteps child={child} taught={taught} />}
          <section class="part" aria-labelledby="child-growth">
            <h3 id="child-growth">{say.child.growth}</h3>
            <Growth key={`${child.id} ${card} ${task.value}`} who={who} cards={cards} card={card} />
          </section>
          <SpellingPanel child={child} />
          {task.value === 'read' && <Places cells={[...taught, ...beyond]} />}
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
      <span class="quiet">{group ? nameOfGroup(group, state) : say.child.inNoSmallGroup}</span>
      <span class="not-printed">
        <a href={linkTo('check')} onClick={() => choose({ child: child.id })}>
          {say.child.shortCheck}
        </a>
        {link(all[at - 1], '←')} {link(all[at + 1], '→')}
      </span>
    </p>
  );
}

/** When a card should come back; why then, and when it was read last, on pointing at it. */
function DueCell({
  due,
  last,
  now,
}: {
  readonly due: Due | null;
  readonly last: Day | null;
  readonly now: Day;
}) {
  if (due === null) return null;
  const read = last === null ? '' : say.child.lastRead(whenSaid(makeDay(last), today()));
  return (
    <span title={say.child.because(DUE_SAID[due.because], read)}>{dueSaid(due.day, now)}</span>
  );
}

/** Each card that was read, what needs it most first, those beyond the group's step behind; the others in a row. */
function Sounds({
  child,
  who,
  taught,
  beyond,
}: {
  readonly child: Child;
  readonly who: Who;
  readonly taught: readonly MapCell[];
  readonly beyond: readonly MapCell[];
}) {
  const now = modelDay();
  const more = {
    names: [say.child.due],
    of: ({ card, seen }: MapCell) => [
      <DueCell
        key={card}
        due={dueOf(knowledge.value[task.value], who, card, isSchool.value)}
        last={seen.until}
        now={now}
      />,
    ],
  };
  const seen = neediestFirst(taught);
  const missed = seen.filter(({ seen: { missed } }) => missed > 0);
  const well = seen.filter(({ seen: { missed } }) => missed === 0);
  const unseen = taught.filter(({ word }) => word === 'not yet seen');
  const unclear = taught.filter(({ seen }) => seen.unclear > 0).length;
  if (seen.length === 0 && beyond.length === 0) {
    return (
      <p class="known-hint">
        {unclear > 0 ? say.child.stumbledAnd(child.name) : say.child.nothingWasNoted(child.name)}
      </p>
    );
  }
  return (
    <>
      <p class="quiet small">{say.child.whatWasRead}</p>
      {missed.length > 0 && (
        <WideTable name={say.child.soundsAsATable}>
          <SeenTable cells={missed} more={more} />
        </WideTable>
      )}
      {beyond.length > 0 && (
        <>
          <h4>{say.child.beyondTheGroupsStep}</h4>
          <WideTable name={say.child.soundsBeyondTheGroups}>
            <SeenTable cells={beyond} more={more} />
          </WideTable>
        </>
      )}
      {well.length > 0 && (
        <>
          <CardRow said={say.child.readAndRightEach(countSaid(well))} cells={well} />
          <details>
            <summary>{say.child.theseAsATable}</summary>
            <WideTable name={say.child.soundsThatWereRight}>
              <SeenTable cells={well} more={more} />
            </WideTable>
          </details>
        </>
      )}
      {unseen.length > 0 && (
        <CardRow said={say.child.taughtAndNotYet(countSaid(unseen))} cells={unseen} />
      )}
    </>
  );
}

/** Cards in a row, with a sign before each that was read. */
/** `12 sounds and 3 words by sight`. */
function countSaid(cells: readonly MapCell[]): string {
  const words = cells.filter(({ card }) => isSightId(card)).length;
  const all = [
    ...(cells.length > words ? [say.child.sounds(cells.length - words)] : []),
    ...(words > 0 ? [say.child.wordsBySight(words)] : []),
  ];
  return all.join(say.child.and);
}

function CardRow({ said, cells }: { readonly said: string; readonly cells: readonly MapCell[] }) {
  return (
    <div class="child-cards">
      <p class="quiet">{said}</p>
      <ul>
        {cells.map(({ card, word }) => (
          <li key={card} title={`${cardName(card)}: ${word}`}>
            <span class="for-ears">
              {cardName(card)}: {word}
            </span>
            {word !== 'not yet seen' && <Sign word={word} />}
            <Card id={card} />
          </li>
        ))}
      </ul>
    </div>
  );
}

const placeNames = {
  beginning: say.child.atTheBeginning,
  middle: say.child.inTheMiddle,
  ending: say.child.atTheEnd,
};

/** How cards went in each place of a word, and where each habit was asked for: counts of what stands above. */
function Places({ cells }: { readonly cells: readonly MapCell[] }) {
  const rows = placeFacts(cells);
  if (rows.length === 0) return null;
  return (
    <section class="part" aria-labelledby="child-places">
      <h3 id="child-places">{say.child.whereInAWord}</h3>
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">{say.child.place}</th>
            <th scope="col">{say.child.right}</th>
            <th scope="col">{say.child.missedThere}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ of, right, missed, cards }) => (
            <tr key={of}>
              <th scope="row">{isPlace(of) ? placeNames[of] : habitNames[of]}</th>
              <td>{say.child.of(right, right + missed)}</td>
              <td>{cardsSaid(cards, soundStyle.value)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function isPlace(of: Place | Habit): of is Place {
  return of in placeNames;
}
