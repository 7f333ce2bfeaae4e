import type { MapCell } from '../../../core/facts/class-map.ts';
import { type Day, makeDay } from '../../../core/learners/day.ts';
import { dueOf } from '../../../core/learners/due.ts';
import { type Child, WHOLE_CLASS } from '../../../core/log/class-state.ts';
import { groupOf } from '../../../core/log/roster-changes.ts';
import { cardsSaid } from '../../../core/story/card-said.ts';
import { goOnSaid, nextSteps } from '../../../core/story/next-steps.ts';
import { soundStyle } from '../../state/accent.ts';
import { today } from '../../state/day.ts';
import { knowledge, modelDay } from '../../state/knowledge.ts';
import { neediestFirst, storyOf } from '../../state/of-child.ts';
import { chooseGroup, classState, nameOfGroup } from '../../state/open-class.ts';
import { linkTo } from '../../state/route.ts';
import { isSchool } from '../../state/school-days.ts';
import { dayName } from '../../wording/day-name.ts';
import { say } from './wording.ts';

/** What to do next for a child: by the way in which its cards go wrong, and when to ask again. */
export function NextSteps({
  child,
  taught,
}: {
  readonly child: Child;
  readonly taught: readonly MapCell[];
}) {
  const notation = soundStyle.value;
  const state = classState.value;
  const story = storyOf(child);
  const steps = nextSteps(story, notation);
  const group = groupOf(state, child);
  const name = group ? nameOfGroup(group, state) : say.nextSteps.theWholeClass;
  const again = againSaid(child, taught);
  return (
    <section class="part" aria-labelledby="child-next">
      <h3 id="child-next">{say.nextSteps.nextSteps}</h3>
      {steps.length === 0 && again === null && <p class="quiet">{goOnSaid(story, child.name)}</p>}
      <ol class="child-steps">
        {steps.map((said) => (
          <li key={said}>{said}</li>
        ))}
        {again !== null && <li>{again}</li>}
      </ol>
      <p class="child-acts not-printed">
        <a
          class="button next"
          href={linkTo('today')}
          onClick={() => chooseGroup(group?.id ?? WHOLE_CLASS)}
        >
          {say.nextSteps.plan(name)}
        </a>
        <a
          class="button"
          href={linkTo('pages', `page=family&child=${encodeURIComponent(child.id)}`)}
        >
          {say.nextSteps.printForTheFamily}
        </a>
      </p>
    </section>
  );

  /** Which cards to hear again, and when: those that are due first of what was missed. */
  function againSaid(one: Child, cells: readonly MapCell[]): string | null {
    const missed = neediestFirst(cells).filter(({ seen }) => seen.last.includes('missed'));
    const due = missed.flatMap(({ card }) => {
      const found = dueOf(knowledge.value.read, { of: 'child', id: one.id }, card, isSchool.value);
      return found === null ? [] : [{ card, day: schoolDayFrom(Math.max(found.day, modelDay())) }];
    });
    if (due.length === 0) return null;
    const first = Math.min(...due.map(({ day }) => day)) as Day;
    const cards = due.filter(({ day }) => day === first).map(({ card }) => card);
    const when =
      first === modelDay()
        ? say.nextSteps.today
        : say.nextSteps.on(dayName(makeDay(first), today()));
    return say.nextSteps.hearReadAgain(one.name, cardsSaid(cards, notation), when);
  }
}

/** A day, or the first school day after it; within a year, or it is the day itself. */
function schoolDayFrom(day: Day): Day {
  const school = isSchool.peek();
  for (let ahead = 0; ahead < 366; ahead++) if (school(day + ahead)) return day + ahead;
  return day;
}
