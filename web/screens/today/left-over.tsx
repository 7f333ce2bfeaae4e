import type { Drill } from '../../../core/drills/drill.ts';
import { mendRun } from '../../../core/drills/mend-run.ts';
import { drillsOf } from '../../../core/log/recent.ts';
import { leftBefore } from '../../../core/warm-up/group-day.ts';
import { leftOver, takingUp } from '../../../core/warm-up/left-over.ts';
import { isSightMoment, type Moment, momentsOf } from '../../../core/warm-up/moments.ts';
import { today } from '../../state/day.ts';
import { readyEngine } from '../../state/engine-ready.ts';
import { classState, group, recordUndoable } from '../../state/open-class.ts';
import { setDrill } from '../../state/plan.ts';
import { taught } from '../../state/progress.ts';
import { changeAsOne } from '../../state/undo.ts';
import { whenSaid } from '../../wording/day-name.ts';
import { listed } from '../../wording/listed.ts';
import { say } from './wording.ts';

/** What was left of the group's last warm-up, on an earlier day: to be taken up today, or dropped. */
export function LeftOver({ drill }: { readonly drill: Drill }) {
  const record = leftBefore(drillsOf(classState.value, group.value.id), today());
  if (!record) return null;
  const { rest } = leftOver(record);
  const end = (said: string) =>
    recordUndoable(said, { kind: 'ended', body: { drillId: record.id, complete: false } });
  const takeUp = () => {
    const ready = readyEngine();
    const mended = ready && mendRun(takingUp(drill, record.drill, rest), taught.peek(), ready);
    changeAsOne(say.leftOver.tookUpWhat, () => {
      end(say.leftOver.tookUpWhat);
      if (mended) setDrill(mended, say.leftOver.tookUpWhat);
    });
  };
  return (
    <div class="left-over" role="note">
      <p>
        {say.leftOver.ofThingsLeft(
          <b>{restSaid(rest)}</b>,
          momentsOf(record.drill).length,
          rest.length,
          whenSaid(record.day, today()),
        )}
      </p>
      <button type="button" class="button" onClick={takeUp}>
        {say.leftOver.takeUpToday(rest.length)}
      </button>
      <button
        type="button"
        class="button plain"
        onClick={() => end(say.leftOver.droppedWhatWasLeft)}
      >
        {say.leftOver.drop(rest.length)}
      </button>
    </div>
  );
}

function restSaid(rest: readonly Moment[]): string {
  const bySight = rest.filter(isSightMoment);
  const others = rest.filter((moment) => !isSightMoment(moment));
  const count = (part: Moment['part']) => others.filter((moment) => moment.part === part).length;
  const counts = [
    [count('visual'), say.leftOver.cards],
    [count('auditory'), say.leftOver.sounds],
    [bySight.length, say.leftOver.wordsBySight],
    [count('blending'), say.leftOver.words],
  ] as const;
  return listed(counts.flatMap(([many, saidOf]) => (many > 0 ? saidOf(many) : [])));
}
