import { useState } from 'preact/hooks';
import type { Drill } from '../../../core/drills/drill.ts';
import { mendRun } from '../../../core/drills/mend-run.ts';
import type { GroupId } from '../../../core/ids.ts';
import type { CardId } from '../../../core/language/card-id.ts';
import type { DrillRecord } from '../../../core/log/class-state.ts';
import { taughtOf } from '../../../core/sequence/progress.ts';
import { Popover } from '../../controls/popover.tsx';
import { readyEngine } from '../../state/engine-ready.ts';
import { chooseGroup, classState, nameOfGroup } from '../../state/open-class.ts';
import { freshSeed, setDrill } from '../../state/plan.ts';
import { progressAt, taught } from '../../state/progress.ts';
import { goTo } from '../../state/route.ts';
import { groupsInOrder } from '../../state/running-order.ts';
import { cardShort } from '../../wording/card-short.ts';
import { listed } from '../../wording/listed.ts';
import { say } from './wording.ts';

/** Plans this warm-up again, for this group or another one that was taught all of it. */
export function RunAgain({ record }: { readonly record: DrillRecord }) {
  const [anchor, setAnchor] = useState<HTMLElement>();
  const state = classState.value;
  const used = cardsIn(record.drill);
  const plan = (groupId: GroupId) => {
    setAnchor(undefined);
    chooseGroup(groupId);
    const again = { ...record.drill, seed: freshSeed() };
    const ready = readyEngine();
    const mended = ready ? mendRun(again, taught.peek(), ready) : again;
    setDrill(mended, say.runAgain.plannedThisWarmUp);
    goTo('today');
  };
  return (
    <>
      <button
        type="button"
        class="button"
        aria-haspopup="dialog"
        onClick={(event) => setAnchor(event.currentTarget)}
      >
        {say.runAgain.runItAgainWith}
      </button>
      {anchor && (
        <Popover
          anchor={anchor}
          title={say.runAgain.runItAgain}
          onClose={() => setAnchor(undefined)}
        >
          <p class="popover-head">{say.runAgain.withWhom}</p>
          <p class="ask-ways">
            {groupsInOrder(state).map((each) => {
              const { correspondences } = taughtOf(progressAt(each.standing));
              const untaught = used.filter((id) => !correspondences.has(id));
              return (
                <button
                  key={each.id}
                  type="button"
                  class="button"
                  disabled={untaught.length > 0}
                  onClick={() => plan(each.id)}
                >
                  {nameOfGroup(each, state)}
                  {untaught.length > 0 &&
                    say.runAgain.notTaught(listed(untaught.slice(0, 3).map(cardShort)))}
                </button>
              );
            })}
          </p>
        </Popover>
      )}
    </>
  );
}

/** Every card that a warm-up shows or asks for. */
function cardsIn({ visual, auditory, board }: Drill): readonly CardId[] {
  const spellings = auditory.flatMap((sound) => sound.spellings);
  return [...new Set([...visual, ...spellings, ...board.piles.flat()])];
}
