import type { CardId } from '../../../core/language/card-id.ts';
import { afterDrill, brokenByCard } from '../../../core/log/after-drill.ts';
import type { DrillRecord } from '../../../core/log/class-state.ts';
import { PARTS } from '../../../core/log/event.ts';
import { leftOver } from '../../../core/warm-up/left-over.ts';
import { brokenLately } from '../../state/broken-lately.ts';
import { today } from '../../state/day.ts';
import { engine } from '../../state/engine-ready.ts';
import { newestCards } from '../../state/newest-cards.ts';
import { progress } from '../../state/progress.ts';
import { dayNow } from '../../warm-up/running.ts';
import { cardShort } from '../../wording/card-short.ts';
import { whenSaid } from '../../wording/day-name.ts';
import { listed } from '../../wording/listed.ts';
import { momentPlace } from '../../wording/moment-place.ts';
import { timeName } from '../../wording/time-name.ts';
import { dayView } from './day-view.ts';

/** So many cards are named before it gets long. */
const FEW = 3;

/** The one line above the plan: why it is as it is, where she stopped, or how it went. */
export function Headline() {
  const view = dayView.value;
  const now = dayNow.value;
  if (view.drill === null) return <p class="quiet headline">{waiting(engine.value)}</p>;
  if (view.kind === 'under-way' && now.kind !== 'fresh') return <Stopped record={now.record} />;
  if (view.kind === 'done' && now.kind !== 'fresh') return <Done record={now.record} />;
  const fresh = newestCards(progress.value).filter((id) => holds(view.drill, id));
  const back = brokenLately.value
    .filter(({ cards }) => cards.length === 1)
    .map(({ cards, day }) => ({ id: cards[0] as CardId, day }))
    .filter(({ id }) => !fresh.includes(id));
  const [first] = back;
  const broke = first ? back.filter(({ day }) => day === first.day) : [];
  return (
    <p class="headline">
      {fresh.length > 0 && (
        <>
          <Cards ids={fresh} /> {fresh.length === 1 ? 'is' : 'are'} new
        </>
      )}
      {fresh.length > 0 && first && '; '}
      {first && (
        <>
          <Cards ids={broke.map(({ id }) => id)} /> broke {whenSaid(first.day, today())}
        </>
      )}
      {fresh.length > 0 || first ? '.' : 'Everything here was taught, and nothing broke lately.'}
    </p>
  );
}

function Stopped({ record }: { readonly record: DrillRecord }) {
  const { up, standing } = leftOver(record);
  const last = record.shown.at(-1)?.at ?? record.at;
  const done = PARTS.slice(0, up ? PARTS.indexOf(up.part) : PARTS.length);
  return (
    <p class="headline">
      You stopped at {timeName(last)}
      {up && standing.at > 0 ? `, at ${momentPlace(up)}` : ''}.
      {done.length === 1 && ' Part 1 is done.'}
      {done.length > 1 && ` Parts ${listed(done.map((_, at) => `${at + 1}`))} are done.`}
    </p>
  );
}

function Done({ record }: { readonly record: DrillRecord }) {
  const { broke, mended } = afterDrill(record);
  const cards = brokenByCard([...broke, ...mended]).filter(({ cards }) => cards.length === 1);
  const ids = cards.map(({ cards }) => cards[0] as CardId);
  return (
    <p class="headline">
      Done{record.ended ? ` at ${timeName(record.ended.at)}` : ''}.{' '}
      {ids.length > 0 ? (
        <>
          <Cards ids={ids} /> broke; the rest held.
        </>
      ) : broke.length + mended.length > 0 ? (
        'Some of it broke.'
      ) : (
        'Nothing broke.'
      )}
    </p>
  );
}

function Cards({ ids }: { readonly ids: readonly CardId[] }) {
  const named = ids.slice(0, FEW).map(cardShort);
  const more = ids.length > FEW ? [`${ids.length - FEW} more`] : [];
  return <b>{listed([...named, ...more])}</b>;
}

function holds(
  drill: {
    readonly visual: readonly string[];
    readonly board: { readonly piles: readonly (readonly string[])[] };
  } | null,
  id: string,
) {
  return drill !== null && (drill.visual.includes(id) || drill.board.piles.flat().includes(id));
}

function waiting(ready: typeof engine.value): string {
  if (ready === 'failed') {
    return 'The word list did not arrive. Once it has been loaded, everything works without a network.';
  }
  return 'Fetching the word list …';
}
