import { childId } from '../../../core/ids.ts';
import { type BringBack, toBringBack } from '../../../core/log/after-drill.ts';
import type { DrillRecord } from '../../../core/log/class-state.ts';
import { Card } from '../../controls/card.tsx';
import { soundStyle } from '../../state/accent.ts';
import { practiced } from '../../state/broken-lately.ts';
import { today } from '../../state/day.ts';
import { cardName } from '../../wording/card-name.ts';
import { whenSaid } from '../../wording/day-name.ts';
import { slipsSaid } from '../../wording/slip-said.ts';
import { childName } from './child-name.ts';
import { say } from './wording.ts';

/** What the warm-up after the last of these brings back, each with why. */
export function Tomorrow({ drills }: { readonly drills: readonly DrillRecord[] }) {
  const all = toBringBack(drills);
  const back = practiced(all);
  const those = all.filter(({ cards }) => cards.every((id) => back.includes(id)));
  if (those.length === 0) {
    return <p>{say.tomorrow.nothingHasToCome}</p>;
  }
  return (
    <ul class="back">
      {those.map((one) => (
        <li key={one.cards.join(' ')} class="back-one">
          <span class="back-cards">
            {one.cards.map((id, place) => (
              <span key={place} role="img" aria-label={cardName(id)} title={cardName(id)}>
                <Card id={id} />
              </span>
            ))}
          </span>
          <span class="quiet">{whySaid(one)}</span>
        </li>
      ))}
    </ul>
  );
}

/** Why it comes back: `broke today, said /ĭ/ twice`; of one or two children with their names. */
function whySaid({ day, marks }: BringBack): string {
  const children = [...new Set(marks.map(({ mark }) => mark.child))];
  const whose = children.includes(null)
    ? ''
    : children.length > 2
      ? say.tomorrow.forChildren(children.length)
      : say.tomorrow.for(children.map((id) => childName(id ?? childId(''))).join(say.tomorrow.and));
  const heard = slipsSaid(
    marks.map(({ mark }) => mark.heard),
    soundStyle.value,
  );
  return say.tomorrow.broke(whenSaid(day, today()), whose, heard === '' ? '' : `: ${heard}`);
}
