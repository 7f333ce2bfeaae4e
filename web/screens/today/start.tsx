import { useState } from 'preact/hooks';
import type { Drill } from '../../../core/drills/drill.ts';
import type { DrillRecord } from '../../../core/log/class-state.ts';
import { drillsOf } from '../../../core/log/recent.ts';
import { groupDay } from '../../../core/warm-up/group-day.ts';
import { leftOver } from '../../../core/warm-up/left-over.ts';
import { Popover } from '../../controls/popover.tsx';
import { today } from '../../state/day.ts';
import { discard } from '../../state/discarded.ts';
import { isOutToday } from '../../state/groups-out.ts';
import { ledBy } from '../../state/led-by.ts';
import { chooseGroup, classState, group, nameOfGroup } from '../../state/open-class.ts';
import { freshSeed, drill as planned, remakeDrill, wishes } from '../../state/plan.ts';
import { linkTo } from '../../state/route.ts';
import { groupsInOrder } from '../../state/running-order.ts';
import { finish } from '../../warm-up/begin.ts';
import { FOLLOWING, ledFrom } from '../../warm-up/lead-here.ts';
import { dayNow, running } from '../../warm-up/running.ts';
import { beginOn, goOn, goOnOrBegin, lookAt } from '../../warm-up/way-in.ts';
import { ledAfar } from '../../warm-up/windows.ts';
import { momentPlace } from '../../wording/moment-place.ts';
import { dayView, looksAhead } from './day-view.ts';
import { say } from './wording.ts';

/** The one next step of the day, and the quieter ones beside it. */
export function Start({ drill }: { readonly drill: Drill }) {
  const { kind } = dayView.value;
  const now = dayNow.value;
  if (kind === 'under-way' && now.kind !== 'fresh') {
    return <UnderWay record={now.record} drill={drill} />;
  }
  if (kind === 'done' && now.kind !== 'fresh') return <Done record={now.record} />;
  if (kind === 'tomorrow') return <Tomorrow drill={drill} />;
  return <Fresh drill={drill} />;
}

/** While a warm-up is open on another device: ways to show it, or to lead it, on this one. */
function OnThisToo() {
  const isOwn = running.value?.drillId === ledAfar.value && ledFrom.value === null;
  if (ledAfar.value === null || isOwn) return null;
  return (
    <>
      <a class="button" href={linkTo('desk', FOLLOWING)}>
        {say.start.useThisDevice}
      </a>
      <a class="button" href={linkTo('stage', FOLLOWING)}>
        {say.start.useIt}
      </a>
    </>
  );
}

function Fresh({ drill }: { readonly drill: Drill }) {
  const empty = drill.visual.length + drill.auditory.length + drill.run.length === 0;
  return (
    <>
      <OnThisToo />
      <Reshuffle />
      <button type="button" class="button" disabled={empty} onClick={() => lookAt(drill)}>
        {say.start.justLooking}
      </button>
      <button
        type="button"
        class="button"
        disabled={empty}
        onClick={() => goOnOrBegin('desk', drill)}
      >
        {say.start.openTheDesk}
      </button>
      <button
        type="button"
        class="button next"
        disabled={empty}
        onClick={() => beginOn('stage', drill)}
      >
        {say.start.startOnTheStage}
      </button>
    </>
  );
}

/** A warm-up that was left: on where it stopped; or from the top, once it is said what becomes of the first. */
function UnderWay({ record, drill }: { readonly record: DrillRecord; readonly drill: Drill }) {
  const [asks, setAsks] = useState<HTMLElement>();
  const { up } = leftOver(record);
  const other = ledBy.value === 'desk' ? 'stage' : 'desk';
  const again = (what: () => void) => {
    setAsks(undefined);
    what();
    beginOn(ledBy.peek(), drill);
  };
  return (
    <>
      <OnThisToo />
      <button
        type="button"
        class="button"
        aria-haspopup="dialog"
        onClick={(event) => setAsks(event.currentTarget)}
      >
        {say.start.endItOrStart}
      </button>
      <button type="button" class="button" onClick={() => goOn(record, other)}>
        {other === 'desk' ? say.start.openTheDesk : say.start.onTheStageAlone}
      </button>
      <button type="button" class="button next" onClick={() => goOn(record)}>
        {up ? say.start.goOnAt(momentPlace(up)) : say.start.goOn}
      </button>
      {asks && (
        <Popover
          anchor={asks}
          title={say.start.whatHappensToWhat}
          onClose={() => setAsks(undefined)}
        >
          <p class="popover-head">{say.start.whatShouldHappen}</p>
          <p class="ask-ways">
            <button type="button" class="button" onClick={() => finish(record)}>
              {say.start.endItHere}
            </button>
            <button type="button" class="button" onClick={() => again(() => finish(record))}>
              {say.start.keepWhatYouMarked}
            </button>
            <button type="button" class="button" onClick={() => again(() => discard(record))}>
              {say.start.takeItOut}
            </button>
          </p>
        </Popover>
      )}
    </>
  );
}

/** Once it is done: on to the next group, or to how it went. */
function Done({ record }: { readonly record: DrillRecord }) {
  const state = classState.value;
  const groups = groupsInOrder(state);
  const at = groups.findIndex(({ id }) => id === group.value.id);
  const next = groups
    .slice(at + 1)
    .find(({ id }) => !isOutToday(id) && groupDay(drillsOf(state, id), today()).kind !== 'done');
  return (
    <>
      <button type="button" class="button" onClick={lookAhead}>
        {say.start.tomorrowsWarmUp}
      </button>
      <button type="button" class="button" onClick={() => beginOn(ledBy.peek(), record.drill)}>
        {say.start.runItAgain}
      </button>
      <a class={next ? 'button' : 'button next'} href={linkTo('after')}>
        {say.start.seeHowItWent}
      </a>
      {next && (
        <button type="button" class="button next" onClick={() => chooseGroup(next.id)}>
          {say.start.onTo(nameOfGroup(next, state))}
        </button>
      )}
    </>
  );
}

/** The plan of the next day is made once, and kept for it. */
function lookAhead(): void {
  const now = dayNow.peek();
  if (now.kind === 'fresh') return;
  if (planned.peek()?.seed === now.record.drill.seed) {
    remakeDrill(wishes.peek(), freshSeed(), say.start.plannedTomorrowsWarmUp);
  }
  looksAhead.value = true;
}

function Tomorrow({ drill }: { readonly drill: Drill }) {
  return (
    <>
      <Reshuffle />
      <button type="button" class="button" onClick={() => lookAt(drill)}>
        {say.start.justLooking}
      </button>
      <button
        type="button"
        class="button"
        onClick={() => {
          looksAhead.value = false;
        }}
      >
        {say.start.backToToday}
      </button>
    </>
  );
}

function Reshuffle() {
  return (
    <button
      type="button"
      class="button"
      onClick={() => remakeDrill(wishes.peek(), freshSeed(), say.start.reshuffled)}
    >
      {say.start.reshuffle}
    </button>
  );
}
