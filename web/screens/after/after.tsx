import type { DrillId } from '../../../core/ids.ts';
import { FirstTime } from '../../controls/first-time.tsx';
import { surveyOf } from '../../state/survey.ts';
import './after.css';
import { useMemo } from 'preact/hooks';
import { afterDrill, brokenByCard } from '../../../core/log/after-drill.ts';
import type { DrillRecord } from '../../../core/log/class-state.ts';
import { drillsOf } from '../../../core/log/recent.ts';
import { Hidden } from '../../controls/hidden.tsx';
import { LookAround } from '../../controls/look-around.tsx';
import { today } from '../../state/day.ts';
import { discard } from '../../state/discarded.ts';
import { readyEngine } from '../../state/engine-ready.ts';
import { classState, group, nameOfGroup } from '../../state/open-class.ts';
import { openPapers, pileOfDay } from '../../state/papers.ts';
import { taught } from '../../state/progress.ts';
import { asked, linkTo } from '../../state/route.ts';
import { dayName } from '../../wording/day-name.ts';
import { AddMark } from './add-mark.tsx';
import { Broke } from './broke.tsx';
import { parseDrillQuery } from './drill-query.ts';
import { Earlier } from './earlier.tsx';
import { HerNote } from './her-note.tsx';
import { RunAgain } from './run-again.tsx';
import { TakenOut } from './taken-out.tsx';
import { Tomorrow } from './tomorrow.tsx';
import { WentWell } from './went-well.tsx';
import { say } from './wording.ts';

/** How it went: one warm-up of the group, in one look, with what the next should bring back. */
export function AfterPage() {
  const record = recordToShow(parseDrillQuery(asked.value));
  if (!record) return <NothingYet />;
  return <Shown key={record.id} record={record} />;
}

function Shown({ record }: { readonly record: DrillRecord }) {
  const state = classState.value;
  const after = useMemo(() => afterDrill(record), [record]);
  const { broke, mended } = after;
  const broken = useMemo(() => brokenByCard([...broke, ...mended]), [broke, mended]);
  const ran = state.groups.get(record.groupId);
  const drills = drillsOf(state, record.groupId);
  const at = drills.indexOf(record);
  const isLast = at === drills.length - 1;
  return (
    <>
      <div class="after-head">
        <div>
          <h1>{say.after.howItWent}</h1>
          <p class="quiet">
            {ran ? nameOfGroup(ran, state) : say.after.aGroup},{' '}
            {record.day === today() ? say.after.today : dayName(record.day, today())}
          </p>
        </div>
        <p class="after-ways">
          <button type="button" class="button plain" onClick={() => discard(record)}>
            {say.after.takeItOut}
          </button>
          <RunAgain record={record} />
          <a
            class="button"
            href={linkTo('papers', `day=${record.day}`)}
            onClick={() => openPapers(pileOfDay(record.groupId, record.day)?.id ?? null)}
          >
            {say.after.spellingPapers}
          </a>
          <a class="button next" href={linkTo('today')}>
            {say.after.done}
          </a>
        </p>
      </div>
      <div class="after">
        <div class="column">
          <section class="part" aria-labelledby="after-well">
            <h2 id="after-well">{say.after.wentWell}</h2>
            <WentWell record={record} after={after} />
          </section>
          <section class="part her-note" aria-labelledby="after-note">
            <h2 id="after-note">{say.after.yourNote}</h2>
            <HerNote record={record} />
          </section>
          <section class="part days" aria-labelledby="after-days">
            <h2 id="after-days">{say.after.theirWarmUps}</h2>
            <Earlier drills={drills} current={record.id} />
            <TakenOut groupId={record.groupId} />
          </section>
        </div>
        <div class="column">
          <section class="part" aria-labelledby="after-broke">
            <h2 id="after-broke">
              {broken.length === 0 ? say.after.nothingBroke : say.after.broke}
            </h2>
            {broken.length === 0 ? (
              <p>{say.after.nothingWasMarkedSo}</p>
            ) : (
              <Broke record={record} broken={broken} />
            )}
            <AddMark record={record} />
          </section>
          <section class="part next-time" aria-labelledby="after-next">
            <h2 id="after-next">
              {isLast ? say.after.nextTimeBringsBack : say.after.cameBackAfterIt}
            </h2>
            {isLast && <FirstTime of="comes back" />}
            <Tomorrow drills={drills.slice(0, at + 1)} />
          </section>
          <section class="part off" aria-labelledby="after-board">
            <h2 id="after-board">{say.after.keptOffTheBoard}</h2>
            <OffTheBoard record={record} />
          </section>
        </div>
      </div>
      <p class="quiet">{say.after.theseArePracticeNotes}</p>
    </>
  );
}

function OffTheBoard({ record: { drill } }: { readonly record: DrillRecord }) {
  const ready = readyEngine();
  const { board } = drill;
  const counts = useMemo(
    () => (ready ? surveyOf(board, taught.peek(), ready) : null),
    [ready, board],
  );
  return counts ? (
    <Hidden board={board} counts={counts} />
  ) : (
    <p class="quiet">{say.after.noBoardWasUsed}</p>
  );
}

function NothingYet() {
  return (
    <div class="after-empty">
      <h1>{say.after.howItWent}</h1>
      <p>{say.after.nothingHasBeenRun}</p>
      <a class="button next" href={linkTo('today')}>
        {say.after.toTodaysWarmUp}
      </a>
      <LookAround />
      <TakenOut groupId={group.value.id} />
    </div>
  );
}

/** The warm-up that was asked for by id, if it is the class's; else the group's last; null for none yet. */
function recordToShow(asked: DrillId | null): DrillRecord | null {
  const named = asked === null ? undefined : classState.value.drills.get(asked);
  return named ?? drillsOf(classState.value, group.value.id).at(-1) ?? null;
}
