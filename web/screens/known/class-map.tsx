import type { CardId } from '../../../core/language/card-id.ts';
import './class-map.css';
import { useState } from 'preact/hooks';
import { countWords, type MapCell, type MapRow } from '../../../core/facts/class-map.ts';
import { allHeardSaid } from '../../../core/facts/heard-said.ts';
import { seenSaid } from '../../../core/facts/seen-said.ts';
import type { Who } from '../../../core/learners/estimate.ts';
import { Card } from '../../controls/card.tsx';
import { LastThree } from '../../controls/last-three.tsx';
import { Sign, SignKey } from '../../controls/sign.tsx';
import { SoundedCard } from '../../controls/sounded-card.tsx';
import { mapFor, members, nameOf, rowsFor, task, taughtCards } from '../../state/class-now.ts';
import { linkToView } from '../../state/known-view.ts';
import { settings } from '../../state/settings.ts';
import { cardName } from '../../wording/card-name.ts';
import { estimateSaid } from '../../wording/said.ts';
import { type Columns, cardsShown, columns } from './columns.ts';
import { gridKeys } from './grid-keys.ts';
import { Skill } from './skill.tsx';
import { Stands } from './stands.tsx';
import { ThresholdsForm } from './thresholds-form.tsx';

/** Children by sounds: a sign in each cell says how well it is known, and pointing at it how sure that is. */
export function ClassMap() {
  const [told, setTold] = useState<{ readonly who: Who; readonly cell: MapCell }>();
  const all = taughtCards.value;
  const cards = cardsShown(all, columns.value, () =>
    mapFor(
      members.value.map(({ id }) => ({ of: 'child', id })),
      all,
    ),
  );
  const { groups, children } = rowsFor(cards);
  const row = (each: MapRow, at: number) => (
    <Row
      key={each.who.id}
      row={each}
      first={at === 0}
      onTell={(cell) => setTold({ who: each.who, cell })}
    />
  );
  return (
    <section class="map" aria-labelledby="map-title">
      <h2 id="map-title" class="for-ears">
        Class map
      </h2>
      {task.value === 'read' && <Stands />}
      <div class="map-tools not-printed">
        <Skill />
        <Which count={all.length} />
      </div>
      <div class="map-key">
        <SignKey />
        <span>
          last three: <LastThree last={['right']} /> right <LastThree last={['missed']} /> missed
        </span>
      </div>
      {cards.length === 0 ? (
        <p class="map-none">No sound is shaky for any child of this group today. Well taught.</p>
      ) : (
        <>
          <div class="map-scroll" tabIndex={-1} {...gridKeys}>
            <table class="map-table">
              <thead>
                <tr>
                  <td />
                  {cards.map((id) => (
                    <th key={id} scope="col" title={cardName(id)}>
                      <span class="for-ears">{cardName(id)}</span>
                      <Card id={id} />
                    </th>
                  ))}
                </tr>
              </thead>
              <tbody class="map-groups">{groups.map(row)}</tbody>
              <tbody>{children.map((each) => row(each, 1))}</tbody>
            </table>
          </div>
          <p class="map-told" aria-hidden="true">
            {told ? (
              <Told {...told} />
            ) : (
              <span class="quiet">
                Point at a sign, or walk with the arrow keys, to see how sure it is.
              </span>
            )}
          </p>
        </>
      )}
      <ThresholdsForm />
    </section>
  );
}

function Row({
  row: { who, cells },
  first,
  onTell,
}: {
  readonly row: MapRow;
  readonly first: boolean;
  readonly onTell: (cell: MapCell) => void;
}) {
  const name = nameOf(who);
  const { shaky } = countWords(cells);
  const link = (card: CardId | null) =>
    linkToView(who.of === 'child' ? { of: 'child', id: who.id, card } : { of: 'group' });
  return (
    <tr>
      <th scope="row">
        <a href={link(null)} title={name}>
          {name}
          {shaky > 0 && <span class="map-shaky"> {shaky} shaky</span>}
        </a>
      </th>
      {cells.map((cell, at) => (
        <td key={cell.card}>
          <a
            href={link(cell.card)}
            tabIndex={first && at === 0 ? 0 : -1}
            aria-label={`${cell.word}. ${seenSaid(cell.seen)}`}
            onFocus={() => onTell(cell)}
            onPointerEnter={() => onTell(cell)}
          >
            <Sign word={cell.word} />
            <LastThree last={cell.seen.last} />
          </a>
        </td>
      ))}
    </tr>
  );
}

/** What a cell says in full. */
function Told({ who, cell }: { readonly who: Who; readonly cell: MapCell }) {
  const { seen, word, estimate } = cell;
  const heard = allHeardSaid(seen, settings.value.notation);
  const likely = word === 'not yet seen' ? 'By what the others do, ' : '';
  return (
    <>
      <b>
        {nameOf(who)} · <SoundedCard id={cell.card} /> {word}
      </b>{' '}
      {seenSaid(seen)} {heard !== '' && `Heard: ${heard}. `}
      <span class="quiet">
        {likely}
        {estimateSaid(estimate)}.
      </span>
    </>
  );
}

function Which({ count }: { readonly count: number }) {
  return (
    <label>
      Sounds{' '}
      <select
        value={columns.value}
        onChange={(event) => {
          columns.value = event.currentTarget.value as Columns;
        }}
      >
        <option value="latest">taught lately</option>
        <option value="shaky">shaky for someone</option>
        <option value="all">all {count}</option>
      </select>
    </label>
  );
}
