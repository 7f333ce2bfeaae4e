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
import { say } from './wording.ts';

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
      {fresh.length > 0 && <>{say.headline.new(<Cards ids={fresh} />, fresh.length)}</>}
      {fresh.length > 0 && first && '; '}
      {first &&
        say.headline.broke(<Cards ids={broke.map(({ id }) => id)} />, whenSaid(first.day, today()))}
      {fresh.length > 0 || first ? '.' : say.headline.everythingHereWasTaught}
    </p>
  );
}

function Stopped({ record }: { readonly record: DrillRecord }) {
  const { up, standing } = leftOver(record);
  const last = record.shown.at(-1)?.at ?? record.at;
  const done = PARTS.slice(0, up ? PARTS.indexOf(up.part) : PARTS.length);
  return (
    <p class="headline">
      {say.headline.youStoppedAt(timeName(last), up && standing.at > 0 ? momentPlace(up) : null)}{' '}
      {done.length > 0 && say.headline.partsAreDone(done.length)}
    </p>
  );
}

function Done({ record }: { readonly record: DrillRecord }) {
  const { broke, mended } = afterDrill(record);
  const cards = brokenByCard([...broke, ...mended]).filter(({ cards }) => cards.length === 1);
  const ids = cards.map(({ cards }) => cards[0] as CardId);
  return (
    <p class="headline">
      {say.headline.done(record.ended ? timeName(record.ended.at) : null)}{' '}
      {ids.length > 0
        ? say.headline.brokeTheRestHeld(<Cards ids={ids} />)
        : broke.length + mended.length > 0
          ? say.headline.someOfItBroke
          : say.headline.nothingBroke}
    </p>
  );
}

function Cards({ ids }: { readonly ids: readonly CardId[] }) {
  const named = ids.slice(0, FEW).map(cardShort);
  const more = ids.length > FEW ? [say.headline.more(ids.length - FEW)] : [];
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
    return say.headline.theWordListDid;
  }
  return say.headline.fetchingTheWordList;
}
