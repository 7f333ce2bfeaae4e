import { soundStyle } from '../../state/accent.ts';
import './heard.css';
import { useState } from 'preact/hooks';
import type { Mark } from '../../../core/log/class-state.ts';
import { type Moment, stepsOf } from '../../../core/warm-up/moments.ts';
import type { Running } from '../../../core/warm-up/run-state.ts';
import { markedOn } from '../../state/marked-on.ts';
import { children, classState, store } from '../../state/open-class.ts';
import { ask } from '../../warm-up/acts.ts';
import {
  askedMark,
  giveTo,
  mark,
  marksAt,
  sayHeard,
  slipsFor,
  takeBackMark,
} from '../../warm-up/marking.ts';
import { hiddenNow, running } from '../../warm-up/running.ts';
import { cardShort } from '../../wording/card-short.ts';
import { slipSaid } from '../../wording/slip-said.ts';
import { slipKey, slipShort } from '../../wording/slip-short.ts';
import { MarkRow } from './mark-row.tsx';
import { WhoSheet } from './who-sheet.tsx';
import { say } from './wording.ts';

/** The row to mark on; then what was heard instead, or what has been marked here. */
export function Heard({ now, moment }: { readonly now: Running; readonly moment: Moment }) {
  const { standing } = now;
  const asked = askedMark.value;
  const inTurn = standing.turn !== null && !standing.joined;
  const lit = inTurn && moment.part !== 'auditory' ? standing.shown - 1 : null;
  return (
    <>
      <MarkRow
        which="now"
        moment={moment}
        open={stepsOf(moment) - hiddenNow(now)}
        lit={moment.part === 'visual' && lit !== null ? 0 : lit}
      />
      <fieldset class="desk-heard" aria-label={say.heard.whatWasHeardInstead}>
        {asked ? <Answers asked={asked} /> : <Marked moment={moment} />}
      </fieldset>
    </>
  );
}

function Answers({ asked }: { readonly asked: Mark }) {
  const notation = soundStyle.value;
  return (
    <>
      <p class="quiet heard-label">{say.heard.heardInstead(markedSaid(asked))}</p>
      {slipsFor(asked).map((slip, place, all) => (
        <button key={slipKey(slip)} type="button" class="chip" onClick={() => sayHeard(slip)}>
          {slipShort(slip, notation)}
          <kbd class="key">{place === all.length - 1 ? 0 : place + 1}</kbd>
        </button>
      ))}
      <Whose mark={asked} />
      <TakeBack />
    </>
  );
}

/** Whose the mark is, and a way to give it to a child. */
function Whose({ mark }: { readonly mark: Mark }) {
  const [asks, setAsks] = useState(false);
  if (children.value.length === 0) return null;
  const name = mark.child === null ? undefined : classState.value.children.get(mark.child)?.name;
  return (
    <>
      <button
        type="button"
        class="chip quiet-chip"
        aria-haspopup="dialog"
        onClick={() => setAsks(true)}
      >
        {name === undefined ? say.heard.whoseAllTogether : say.heard.whose(name)}
      </button>
      {asks && (
        <WhoSheet
          title={say.heard.whoseWasIt}
          now={mark.child}
          mayBeAll
          onWho={(child) => giveTo(mark.id, child)}
          onClose={() => setAsks(false)}
        />
      )}
    </>
  );
}

function Marked({ moment }: { readonly moment: Moment }) {
  const marks = marksAt(moment);
  if (marks.length === 0) {
    return (
      <>
        <p class="quiet">{say.heard.nothingMarkedItWent}</p>
        {moment.part === 'blending' && (
          <button type="button" class="chip quiet-chip" onClick={() => mark('now', null)}>
            {say.heard.theWholeWord(<kbd class="key">0</kbd>)}
          </button>
        )}
      </>
    );
  }
  return (
    <>
      {marks.map((one) => (
        <button key={one.id} type="button" class="chip marked" onClick={() => ask(one.id)}>
          {markedSaid(one)}
          {one.heard && `: ${slipSaid(one.heard, soundStyle.value)}`}
          {markedOn(one.id) && <span class="small">{markedOn(one.id)}</span>}
          <Kept id={one.id} />
        </button>
      ))}
      <TakeBack />
    </>
  );
}

function TakeBack() {
  return (
    <button type="button" class="chip quiet-chip take-back" onClick={takeBackMark}>
      {say.heard.undo(<kbd class="key">Z</kbd>)}
    </button>
  );
}

/** Whether a mark is kept for good on this device: a small sign, and words for ears; none while she is just looking. */
function Kept({ id }: { readonly id: string }) {
  if (running.value?.rehearsed) return null;
  const waits = store.unsaved.value.some((event) => event.id === id);
  return (
    <span
      class={`kept${waits ? ' waits' : ''}`}
      title={waits ? say.heard.notKeptYet : say.heard.kept}
    >
      <span class="for-ears">{waits ? say.heard.butNotKeptYet : say.heard.andKept}</span>
    </span>
  );
}

/** Which card broke, and whose it was: `e, Odalys`. */
function markedSaid({ cards, broke, child }: Mark): string {
  const id = broke === null ? undefined : cards[broke - 1];
  const what = id === undefined ? say.heard.wholeWord : cardShort(id);
  const name = child === null ? undefined : classState.value.children.get(child)?.name;
  return name === undefined ? what : `${what}, ${name}`;
}
