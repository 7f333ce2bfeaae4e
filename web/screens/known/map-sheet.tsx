import './map-sheet.css';
import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { missedLast } from '../../../core/facts/card-facts.ts';
import { countWords, type MapCell } from '../../../core/facts/class-map.ts';
import { seenSaid } from '../../../core/facts/seen-said.ts';
import type { CardId } from '../../../core/language/card-id.ts';
import type { Who } from '../../../core/learners/estimate.ts';
import { Card } from '../../controls/card.tsx';
import { Range } from '../../controls/range.tsx';
import { Sign } from '../../controls/sign.tsx';
import { mapFor, members, nameOf, task, taughtCards } from '../../state/class-now.ts';
import { everyone } from '../../state/everyone.ts';
import { observations } from '../../state/knowledge.ts';
import { linkToView, type OpenedSheet } from '../../state/known-view.ts';
import { cellsOf, sentenceOn } from '../../state/of-child.ts';
import { cardName } from '../../wording/card-name.ts';
import { namesSaid } from '../../wording/said.ts';
import { LastOfCard, LastOfChild } from './last-readings.tsx';
import { say } from './wording.ts';

const CLOSED = linkToView({ of: 'map', open: null });

/** Beside the map: one cell or one row in full, with its last readings. Escape closes it. */
export function MapSheet({ open }: { readonly open: OpenedSheet }) {
  const { who, card } = open;
  useEffect(() => {
    const close = (event: KeyboardEvent) => {
      if (event.key !== 'Escape' || event.defaultPrevented) return;
      const cell = document.querySelector<HTMLElement>('.map-table a[aria-current]');
      location.hash = CLOSED;
      cell?.focus({ preventScroll: true });
    };
    addEventListener('keydown', close);
    return () => removeEventListener('keydown', close);
  }, []);
  const child = who.of === 'child' ? everyone.value.find(({ id }) => id === who.id) : undefined;
  if (who.of === 'child' && child === undefined) return null;
  return (
    <aside class="map-sheet" aria-labelledby="sheet-title">
      <header>
        <h3 id="sheet-title">
          <span>{nameOf(who)}</span>
          {card !== null && (
            <span title={cardName(card)}>
              <span class="for-ears">{cardName(card)}</span>
              <Card id={card} />
            </span>
          )}
        </h3>
        <a class="map-close not-printed" href={CLOSED} aria-label={say.mapSheet.close}>
          ×
        </a>
      </header>
      {card !== null ? <OfCell who={who} card={card} /> : <OfRow who={who} />}
      {child && (
        <p>
          <a href={linkToView({ of: 'child', id: child.id, card })}>
            {say.mapSheet.allAbout(child.name)}
          </a>
        </p>
      )}
      <p class="quiet small">{say.mapSheet.practiceNotesNot}</p>
    </aside>
  );
}

function OfCell({ who, card }: { readonly who: Who; readonly card: CardId }) {
  const cell = mapFor([who], [card])[0]?.cells[0];
  if (cell === undefined) return null;
  const { seen } = cell;
  return (
    <>
      <p>{seenSaid(seen)}</p>
      {who.of === 'child' ? (
        <LastOfCard card={card} readings={seen.readings} />
      ) : (
        <OfMembers card={card} />
      )}
      <Likely cell={cell} />
    </>
  );
}

/** What is estimated, after what was seen. */
function Likely({ cell: { word, estimate, seen } }: { readonly cell: MapCell }) {
  const [p, low, high] = [estimate.p, estimate.low, estimate.high].map((one) =>
    Math.round(one * 10),
  );
  return (
    <div class="sheet-likely">
      <p>
        <Sign word={word} />{' '}
        {say.mapSheet.of10(
          <b>{word === 'not yet seen' ? say.mapSheet.notYetSeen : `${capital(word)}.`}</b>,
          word === 'not yet seen' ? say.mapSheet.byWhatTheOthers : say.mapSheet.probably,
          p,
          low === high
            ? say.mapSheet.thatIsQuiteSure
            : say.mapSheet.anythingFromToWould(
                low ?? 0,
                high ?? 10,
                seen.last.length < 3 ? say.mapSheet.soFew : say.mapSheet.these,
              ),
        )}
      </p>
      <Range {...estimate} />
      <p class="sheet-scale quiet small" aria-hidden="true">
        <span>0</span>
        <span>10</span>
      </p>
    </div>
  );
}

/** Of a card of a group: who missed it lately, who read it right, and who is left. */
function OfMembers({ card }: { readonly card: CardId }) {
  const rows = mapFor(
    members.value.map(({ id }) => ({ of: 'child', id })),
    [card],
  );
  const namesOf = (isAsked: (cell: MapCell) => boolean) =>
    rows.filter(({ cells }) => cells.every(isAsked)).map(({ who }) => nameOf(who));
  const lines: readonly (readonly [string, readonly string[]])[] = [
    [say.mapSheet.missedItLately, namesOf(({ seen }) => missedLast(seen) > 0)],
    [
      say.mapSheet.rightInAllTheir,
      namesOf(({ seen }) => seen.last.length > 0 && missedLast(seen) === 0),
    ],
    [say.mapSheet.haveNotRead, namesOf(({ seen }) => seen.last.length === 0)],
  ];
  return (
    <dl class="sheet-members">
      {lines.map(
        ([said, names]) =>
          names.length > 0 && (
            <div key={said}>
              <dt class="quiet small">
                {said}: {names.length}
              </dt>
              <dd>{namesSaid(names, 30)}</dd>
            </div>
          ),
      )}
    </dl>
  );
}

function OfRow({ who }: { readonly who: Who }): ComponentChildren {
  const child = who.of === 'child' ? everyone.value.find(({ id }) => id === who.id) : undefined;
  if (child === undefined) {
    return <p>{counts(mapFor([who], taughtCards.value)[0]?.cells ?? [])}</p>;
  }
  const words = observations.value.filter(
    (one) => one.child === child.id && one.task === task.value,
  );
  return (
    <>
      <p>{task.value === 'read' ? sentenceOn(child) : counts(cellsOf(child, 'spell').taught)}</p>
      {words.length > 0 && <LastOfChild words={words} />}
    </>
  );
}

function counts(cells: readonly MapCell[]): string {
  const words = countWords(cells);
  return say.mapSheet.secureGrowingShakyNot(
    words.secure,
    words.growing,
    words.shaky,
    words['not yet seen'],
  );
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
