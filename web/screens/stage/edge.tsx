import { soundStyle } from '../../state/accent.ts';
import './edge.css';
import { useState } from 'preact/hooks';
import { readerAt } from '../../../core/warm-up/calling.ts';
import { cardsOf, type Moment } from '../../../core/warm-up/moments.ts';
import { classState } from '../../state/open-class.ts';
import { settings } from '../../state/settings.ts';
import type { KeyWish } from '../../warm-up/keys.ts';
import { askedMark, lastMark, mark, marksAt, sayHeard, slipsFor } from '../../warm-up/marking.ts';
import { running } from '../../warm-up/running.ts';
import { glimpseOf } from '../../wording/glimpse.ts';
import { slipKey, slipShort } from '../../wording/slip-short.ts';
import type { Edge as Where } from './edge-space.ts';
import { say } from './wording.ts';

interface EdgeProps {
  readonly where: Exclude<Where, 'none'>;
  readonly moment: Moment;
  readonly next: Moment | undefined;
  readonly onWish: (wish: KeyWish) => void;
}

/**
 * The teacher's edge, where one screen is all there is: small signs that say
 * little to the children. A number for each card, to mark the one that broke;
 * then what was heard instead. Pointed at or focused, a sign says in words what it does.
 */
export function Edge({ where, moment, next, onWish }: EdgeProps) {
  const [tip, setTip] = useState<string | null>(null);
  const tell = ({ target }: Event) =>
    setTip((target as Element).closest('button')?.getAttribute('aria-label') ?? null);
  const tellNothing = () => setTip(null);
  return (
    <>
      <aside
        class={`edge at-${where}`}
        aria-label={say.edge.yourEdge}
        onPointerOver={(event) => event.pointerType === 'mouse' && tell(event)}
        onPointerLeave={tellNothing}
        onFocusIn={tell}
        onFocusOut={tellNothing}
      >
        <p class="edge-said">
          {moment.part === 'auditory' && <span>{glimpseOf(moment)}</span>}
          <Reader />
          {settings.value.glimpse && <span>› {glimpseOf(next)}</span>}
        </p>
        <div class="edge-marks">{askedMark.value ? <Answers /> : <Cards moment={moment} />}</div>
        <div class="edge-acts">
          <button
            type="button"
            class="edge-act"
            aria-label={say.edge.takeTheLastMark}
            disabled={lastMark.value === null}
            onClick={() => onWish('unmark')}
          >
            Z
          </button>
          <button
            type="button"
            class="edge-act"
            aria-label={say.edge.correctItMyTurn}
            onClick={() => onWish('correct')}
          >
            C
          </button>
        </div>
      </aside>
      {tip !== null && (
        <p class={`edge-tip of-${where}`} aria-hidden="true">
          {tip}
        </p>
      )}
    </>
  );
}

function Reader() {
  const now = running.value;
  const reader = now && readerAt(now.calling, now.standing.at);
  const child = reader === null ? undefined : classState.value.children.get(reader);
  return child ? <span class="edge-name">{child.name}</span> : null;
}

function Cards({ moment }: { readonly moment: Moment }) {
  const marked = marksAt(moment);
  return cardsOf(moment)
    .slice(0, 9)
    .map((id, place) => (
      <button
        key={`${place} ${id}`}
        type="button"
        class="edge-mark"
        aria-pressed={marked.some(({ broke }) => broke === place + 1)}
        aria-label={say.edge.cardBroke(place + 1)}
        onClick={() => mark('now', place + 1)}
      >
        {place + 1}
      </button>
    ));
}

function Answers() {
  const asked = askedMark.value;
  if (!asked) return null;
  return slipsFor(asked).map((slip) => (
    <button
      key={slipKey(slip)}
      type="button"
      class="edge-answer"
      aria-label={say.edge.heardInstead(slipShort(slip, soundStyle.value))}
      onClick={() => sayHeard(slip)}
    >
      {slip.kind === 'other' ? say.edge.other : slipShort(slip, soundStyle.value)}
    </button>
  ));
}
