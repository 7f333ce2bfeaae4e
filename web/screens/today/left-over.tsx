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
import { counted } from '../../wording/counted.ts';
import { whenSaid } from '../../wording/day-name.ts';
import { listed } from '../../wording/listed.ts';

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
    changeAsOne('Took up what was left.', () => {
      end('Took up what was left.');
      if (mended) setDrill(mended, 'Took up what was left.');
    });
  };
  return (
    <div class="left-over" role="note">
      <p>
        <b>{restSaid(rest)}</b> of {counted(momentsOf(record.drill).length, 'thing')}{' '}
        {rest.length === 1 ? 'was' : 'were'} left {whenSaid(record.day, today())}.
      </p>
      <button type="button" class="button" onClick={takeUp}>
        Take {rest.length === 1 ? 'it' : 'them'} up today
      </button>
      <button type="button" class="button plain" onClick={() => end('Dropped what was left.')}>
        Drop {rest.length === 1 ? 'it' : 'them'}
      </button>
    </div>
  );
}

function restSaid(rest: readonly Moment[]): string {
  const bySight = rest.filter(isSightMoment);
  const others = rest.filter((moment) => !isSightMoment(moment));
  const count = (part: Moment['part']) => others.filter((moment) => moment.part === part).length;
  const counts = [
    [count('visual'), 'card', ''],
    [count('auditory'), 'sound', ''],
    [bySight.length, 'word', ' by sight'],
    [count('blending'), 'word', ''],
  ] as const;
  return listed(
    counts.flatMap(([many, thing, which]) => (many > 0 ? `${counted(many, thing)}${which}` : [])),
  );
}
