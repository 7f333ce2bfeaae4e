import { useEffect, useMemo, useState } from 'preact/hooks';
import { type CardId, isSightId, lettersShown } from '../../../core/language/card-id.ts';
import { makeDay } from '../../../core/learners/day.ts';
import type { Who } from '../../../core/learners/estimate.ts';
import { type GrowthPoint, growthOf } from '../../../core/learners/growth.ts';
import { WideTable } from '../../controls/wide-table.tsx';
import { task } from '../../state/class-now.ts';
import { today } from '../../state/day.ts';
import { modelDay, observations } from '../../state/knowledge.ts';
import { thresholds } from '../../state/thresholds.ts';
import { cardName } from '../../wording/card-name.ts';
import { dayName } from '../../wording/day-name.ts';
import { shareSaid } from '../../wording/said.ts';
import type { GrowthPictureProps } from './growth-picture.tsx';
import { say } from './wording.ts';

/** A card of a list that is read line by line: its letters, then its sound and keyword. */
function soundedName(id: CardId): string {
  return `${lettersShown(id)}, ${cardName(id).split(', ').slice(1).join(', ')}`;
}

/** How what someone knows grew, of all sounds or of one: as a picture and as numbers. */
export function Growth({
  who,
  cards,
  card: first,
}: {
  readonly who: Who;
  readonly cards: readonly CardId[];
  readonly card: CardId | null;
}) {
  const [card, setCard] = useState<CardId | ''>(
    first !== null && cards.includes(first) ? first : '',
  );
  const wanted = useMemo(() => (card === '' ? cards : [card]), [card, cards]);
  const points = useMemo(
    () => growthOf(observations.value, task.value, who, wanted, modelDay()),
    [observations.value, task.value, who.id, wanted],
  );
  return (
    <>
      <label class="growth-of">
        {say.growth.show}{' '}
        <select
          value={card}
          onChange={(event) => setCard(cards.find((id) => id === event.currentTarget.value) ?? '')}
        >
          <option value="">{say.growth.allSounds}</option>
          {cards.toReversed().map((id) => (
            <option key={id} value={id}>
              {isSightId(id) ? cardName(id) : soundedName(id)}
            </option>
          ))}
        </select>
      </label>
      {points.length === 0 ? (
        <p class="quiet">{say.growth.nothingWasReadAlone}</p>
      ) : (
        <>
          <Picture
            points={points}
            single={card !== ''}
            lines={card === '' ? [] : [thresholds.value.shaky, thresholds.value.secure]}
          />
          <p class="quiet small">
            {card === '' ? say.growth.theLineHowMany : say.growth.theLineHowLikely}
          </p>
          <Numbers points={points} single={card !== ''} />
        </>
      )}
    </>
  );
}

/** The picture, whose library is fetched when it is first looked at; the numbers are there without it. */
function Picture(props: GrowthPictureProps) {
  const [room, setRoom] = useState<typeof import('./growth-picture.tsx')>();
  useEffect(() => {
    import('./growth-picture.tsx').then(setRoom, () => {});
  }, []);
  return room ? <room.GrowthPicture {...props} /> : <div class="growth-picture" />;
}

function Numbers({
  points,
  single,
}: {
  readonly points: readonly GrowthPoint[];
  readonly single: boolean;
}) {
  const said = (value: number) => (single ? shareSaid(value) : value.toFixed(1));
  const step = Math.max(1, Math.ceil(points.length / 12));
  const shown = points.filter(({ met }, at) => met > 0 && (points.length - 1 - at) % step === 0);
  return (
    <details>
      <summary>{say.growth.theNumbers}</summary>
      <WideTable name={say.growth.growthAsNumbers}>
        <table class="figures">
          <thead>
            <tr>
              <th scope="col">{say.growth.day}</th>
              {!single && <th scope="col">{say.growth.soundsReadSoFar}</th>}
              <th scope="col">{say.growth.likelyRight}</th>
              <th scope="col">{say.growth.atLeast}</th>
              <th scope="col">{say.growth.atMost}</th>
            </tr>
          </thead>
          <tbody>
            {shown.map(({ day, met, known, low, high }) => (
              <tr key={day}>
                <th scope="row">{dayName(makeDay(day), today())}</th>
                {!single && <td>{met}</td>}
                <td>{said(known)}</td>
                <td>{said(low)}</td>
                <td>{said(high)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </WideTable>
    </details>
  );
}
