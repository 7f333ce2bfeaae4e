import { soundStyle } from '../../state/accent.ts';
import './class-map.css';
import { countWords, type MapCell, type MapRow } from '../../../core/facts/class-map.ts';
import { allHeardSaid, heardShort } from '../../../core/facts/heard-said.ts';
import { seenSaid } from '../../../core/facts/seen-said.ts';
import type { CardId } from '../../../core/language/card-id.ts';
import type { Who } from '../../../core/learners/estimate.ts';
import { Card } from '../../controls/card.tsx';
import { LastThree } from '../../controls/last-three.tsx';
import { Sign, SignKey } from '../../controls/sign.tsx';
import { useRoving } from '../../controls/use-roving.ts';
import { nameOf, task } from '../../state/class-now.ts';
import { linkToView, type OpenedSheet } from '../../state/known-view.ts';
import { cardName } from '../../wording/card-name.ts';
import { MapSheet } from './map-sheet.tsx';
import { columns, shown } from './map-shown.ts';
import { MapTools } from './map-tools.tsx';
import { Stands } from './stands.tsx';
import { ThresholdsForm } from './thresholds-form.tsx';
import { say } from './wording.ts';

/** What stands out, and below it children by sounds: a cell opens a sheet with its last readings beside the map. */
export function ClassMap({ open }: { readonly open: OpenedSheet | null }) {
  const { cards } = shown.value;
  return (
    <section class="map" aria-labelledby="map-title">
      <h2 id="map-title" class="for-ears">
        {say.classMap.classMap}
      </h2>
      {task.value === 'read' && <Stands />}
      <MapTools />
      <Key />
      {cards.length === 0 ? (
        <p class="map-none">
          {columns.value === 'shaky' ? say.classMap.noSoundIsShaky : say.classMap.noChild}
        </p>
      ) : (
        <div class={open === null ? 'map-beside' : 'map-beside with-sheet'}>
          <MapTable open={open} />
          {open !== null && <MapSheet key={`${open.who.id} ${open.card}`} open={open} />}
        </div>
      )}
      <ThresholdsForm />
    </section>
  );
}

/** What the signs and marks of a cell mean. */
function Key() {
  return (
    <div class="map-key small">
      <SignKey />
      <span>
        {say.classMap.lastThreeRightMissed(
          <LastThree last={['right']} />,
          <LastThree last={['missed']} />,
        )}
      </span>
      <span>
        <span class="map-heard">/ĕ/</span> {say.classMap.whatWasSaidInstead}
      </span>
      <span>
        <span class="map-unclear">?</span> {say.classMap.wentWrongNotSaid}
      </span>
    </div>
  );
}

function MapTable({ open }: { readonly open: OpenedSheet | null }) {
  const { stages, cards, groups, children } = shown.value;
  // The sheet beside the map, while it is open, tells of the link that was walked to.
  const roving = useRoving<HTMLDivElement>({}, (link) => {
    if (open !== null && link instanceof HTMLAnchorElement) location.replace(link.href);
  });
  const row = (each: MapRow) => <Row key={each.who.id} row={each} open={open} />;
  return (
    <div class="map-scroll" tabIndex={-1} {...roving}>
      <table class="map-table">
        <thead>
          <tr class="map-stages">
            <td rowSpan={2}>
              {say.classMap.children(children.length)}, {say.classMap.sounds(cards.length)}
            </td>
            {stages.map(({ stage, cards: all }) => (
              <th key={stage} scope="colgroup" colSpan={all.length} title={stage}>
                <span>{stage === '' ? say.classMap.notInYourOrder : stage}</span>
              </th>
            ))}
          </tr>
          <tr>
            {stages.flatMap(({ cards: all }) =>
              all.map((id, at) => (
                <th
                  key={id}
                  scope="col"
                  title={cardName(id)}
                  class={edgeOf(at === 0, open?.card === id)}
                >
                  <span class="for-ears">{cardName(id)}</span>
                  <Card id={id} />
                </th>
              )),
            )}
          </tr>
        </thead>
        {groups.length > 0 && <tbody class="map-groups">{groups.map(row)}</tbody>}
        <tbody>{children.map(row)}</tbody>
      </table>
    </div>
  );
}

function edgeOf(isFirst: boolean, isOpen: boolean): string {
  return `${isFirst ? 'map-first' : ''} ${isOpen ? 'map-open' : ''}`.trim();
}

function Row({
  row: { who, cells },
  open,
}: {
  readonly row: MapRow;
  readonly open: OpenedSheet | null;
}) {
  const name = nameOf(who);
  const { shaky } = countWords(cells);
  const isHere = open !== null && open.who.of === who.of && open.who.id === who.id;
  const starts = firstOfStages();
  return (
    <tr class={isHere ? 'map-open' : undefined} data-rove-row>
      <th scope="row">
        <a
          href={linkToView({ of: 'map', open: { who, card: null } })}
          title={name}
          data-rove
          aria-current={isHere && open.card === null ? 'true' : undefined}
        >
          <span class="map-name">{name}</span>
          {shaky > 0 && <span class="map-shaky">{say.classMap.shaky(shaky)}</span>}
        </a>
      </th>
      {cells.map((cell) => (
        <td key={cell.card} class={starts.has(cell.card) ? 'map-first' : undefined}>
          <Cell who={who} cell={cell} isOpen={isHere && open.card === cell.card} />
        </td>
      ))}
    </tr>
  );
}

function firstOfStages(): ReadonlySet<CardId> {
  return new Set(shown.value.stages.flatMap(({ cards }) => cards.slice(0, 1)));
}

/** What was seen of one card, and the word for it: never a dot where something was read. */
function Cell({
  who,
  cell: { card, seen, word },
  isOpen,
}: {
  readonly who: Who;
  readonly cell: MapCell;
  readonly isOpen: boolean;
}) {
  const notation = soundStyle.value;
  const heard = seen.last.includes('missed') ? seen.heard[0] : undefined;
  const all = allHeardSaid(seen, notation);
  const said = `${word}. ${seenSaid(seen)}${all === '' ? '' : say.classMap.heard(all)}`;
  return (
    <a
      href={linkToView({ of: 'map', open: { who, card } })}
      data-rove
      aria-label={said}
      aria-current={isOpen ? 'true' : undefined}
      title={`${nameOf(who)}: ${said}`}
    >
      <span class="map-sign">
        {word === 'not yet seen' && seen.unclear > 0 ? (
          <span class="map-unclear">?</span>
        ) : (
          <Sign word={word} />
        )}
        {heard && <span class="map-heard">{heardShort(heard.heard, card, notation)}</span>}
      </span>
      <LastThree last={seen.last} />
    </a>
  );
}
