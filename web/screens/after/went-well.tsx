import type { CardId } from '../../../core/language/card-id.ts';
import { type AfterDrill, markedCards } from '../../../core/log/after-drill.ts';
import type { DrillRecord } from '../../../core/log/class-state.ts';
import type { Part } from '../../../core/log/event.ts';
import type { Evidence } from '../../../core/log/evidence.ts';
import { Card } from '../../controls/card.tsx';
import { cardName } from '../../wording/card-name.ts';
import { say } from './wording.ts';

/** What went well: how many of each part, and the cards on which nothing broke. */
export function WentWell({
  record,
  after,
}: {
  readonly record: DrillRecord;
  readonly after: AfterDrill;
}) {
  const { well, broke, mended } = after;
  const reached = well.length + broke.length + mended.length;
  const planned =
    record.drill.visual.length + record.drill.auditory.length + record.drill.run.length;
  const steady = steadyCards(after);
  return (
    <>
      <p class="score">
        {say.wentWell.of(<b>{well.length}</b>, reached)}
        {mended.length > 0 && (
          <span class="quiet">{say.wentWell.andMoreTheSecond(mended.length)}</span>
        )}
      </p>
      <ul class="by-part">
        {parts.map(([part, thing]) => {
          const all = [...well, ...broke, ...mended].filter((one) => one.part === part).length;
          if (all === 0) return null;
          return (
            <li key={part}>
              {say.wentWell.ofThings(well.filter((one) => one.part === part).length, all, thing)}
            </li>
          );
        })}
      </ul>
      {steady.length > 0 && (
        <>
          <h3>{say.wentWell.cardsOnWhichNothing}</h3>
          <p class="steady">
            {steady.map((id) => (
              <span key={id} role="img" aria-label={cardName(id)} title={cardName(id)}>
                <Card id={id} />
              </span>
            ))}
          </p>
        </>
      )}
      {reached < planned && (
        <p class="quiet small">{say.wentWell.wereNotReached(planned - reached)}</p>
      )}
    </>
  );
}

const parts: readonly (readonly [Part, string])[] = [
  ['visual', say.wentWell.cards],
  ['auditory', say.wentWell.sounds],
  ['blending', say.wentWell.words],
];

/** Cards that came up and were never under a mark, in the order in which they came. */
function steadyCards({ well, broke, mended }: AfterDrill): readonly CardId[] {
  const hurt = new Set([...broke, ...mended].flatMap(({ marks }) => marks.flatMap(markedCards)));
  const came = (evidence: readonly Evidence[]) => evidence.flatMap(({ cards }) => cards);
  return [...new Set(came([...well, ...broke, ...mended]))].filter((id) => !hurt.has(id));
}
