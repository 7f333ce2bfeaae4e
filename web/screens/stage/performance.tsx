import { useEffect, useRef, useState } from 'preact/hooks';
import { boolean } from 'valibot';
import { sweptTo } from '../../../core/boards/shapes/row-layout.ts';
import { cardPlaces, stepsOf } from '../../../core/warm-up/moments.ts';
import type { Running } from '../../../core/warm-up/run-state.ts';
import { type Act, momentAt } from '../../../core/warm-up/standing.ts';
import { Controls } from '../../controls/controls.tsx';
import { End } from '../../controls/end.tsx';
import { KeySheet } from '../../controls/key-sheet.tsx';
import { TurnPicture } from '../../controls/turn-picture.tsx';
import { useAwake } from '../../device/awake.ts';
import {
  enterFullScreen,
  keepAwake,
  leaveFullScreen,
  onFullScreenLeft,
  toggleFullScreen,
} from '../../device/full-screen.ts';
import { remembered } from '../../device/remembered.ts';
import { goTo, linkTo } from '../../state/route.ts';
import { setSettings, settings } from '../../state/settings.ts';
import { wall } from '../../state/wall.ts';
import { perform } from '../../warm-up/acts.ts';
import type { KeyWish } from '../../warm-up/keys.ts';
import { hiddenNow, isOver, moments } from '../../warm-up/running.ts';
import { doWish, useKeys } from '../../warm-up/use-keys.ts';
import { deskIsOpen } from '../../warm-up/windows.ts';
import { momentName } from '../../wording/moment-name.ts';
import { Answer } from './answer.tsx';
import { AtRest } from './at-rest.tsx';
import { Edge } from './edge.tsx';
import { edgeOn } from './edge-space.ts';
import { groundOf } from './ground.ts';
import { useLayouts } from './layouts.ts';
import { zoneOf } from './pointing.ts';
import { Row } from './row.tsx';
import { Sweep } from './sweep.tsx';
import { useSweepDrag } from './sweep-drag.ts';
import { Ticks } from './ticks.tsx';
import { say } from './wording.ts';

/** One warm-up as it is run: keys, touches and the sheet they act on. */
export function Performance({ now }: { readonly now: Running }) {
  const { drill, standing, blending } = now;
  const all = moments.value;
  const led = wall.value !== null || deskIsOpen.value || isOpenedByDesk();
  const edge = edgeOn(!led, { width: innerWidth });
  const prepared = useLayouts(all, drill.board.piles.length, edge);
  const { hand, sweepPace } = settings.value;
  const [keysShown, setKeysShown] = useState(false);
  const [nudged, setNudged] = useState<{ readonly card: number; readonly times: number } | null>(
    null,
  );
  const [drawnSweep, setDrawnSweep] = useState({ at: -1, count: 0 });
  const { awake, wake, toggle } = useAwake();
  const root = useRef<HTMLElement>(null);
  const moment = momentAt(standing, all);
  const next = momentAt({ ...standing, at: standing.at + 1 }, all);

  const isFirstTime = !led && !knowsStage.value;
  useEffect(() => {
    if (standing.at > 0) knowsStage.value = true;
  }, [standing.at]);
  useEffect(keepAwake, []);
  useEffect(() => root.current?.focus(), []);

  const leave = () => leaveStage(led, isOver(now) && now.rehearsed === null);
  const onWish = (wish: KeyWish) => {
    if (wall.peek() !== null && !WALL_WISHES.has(wish)) return;
    if (wish === 'dictate' || wish === 'another' || wish === 'who' || doWish(wish)) return;
    if (wish === 'leave') leave();
    else if (wish === 'keys') setKeysShown(true);
    else if (wish === 'glimpse') setSettings({ glimpse: !settings.peek().glimpse });
    else if (wish === 'show') enterFullScreen();
    else toggleFullScreen();
  };
  useKeys(onWish);
  const leaveNow = useRef(leave);
  leaveNow.current = leave;
  useEffect(() => (led ? undefined : onFullScreenLeft(() => leaveNow.current())), [led]);

  const layout = prepared?.layouts[standing.order[standing.at] ?? -1];
  const swept = moment?.part === 'blending';
  const space = prepared?.space ?? noSpace;
  const ground = groundOf(layout, space, swept ? 'swept' : 'alone');
  const drag = useSweepDrag(sweepPace);
  const sweepable = swept && !standing.paused;
  const open = moment ? stepsOf(moment) - hiddenNow(now) : 0;
  const lit = standing.turn !== null && !standing.joined && swept ? standing.shown - 1 : null;

  const touch = (what: Act, card: number | null) => {
    if (!perform(what) && card !== null) setNudged({ card, times: (nudged?.times ?? 0) + 1 });
  };
  const onPointerUp = (event: PointerEvent) => {
    const target = event.target as Element;
    const drawn = drag.end(event);
    if (drawn === 'swept') {
      setDrawnSweep({ at: standing.at, count: standing.sweeps + 1 });
      perform('sweep');
    }
    if (drawn !== null || target.closest('button, a, dialog, aside, .controls')) return;
    const card = target.closest<HTMLElement>('.place')?.dataset.card;
    if (card !== undefined && sweepable) return touch({ turn: Number(card) }, Number(card));
    const { left, width } = (event.currentTarget as Element).getBoundingClientRect();
    const at = { clientX: event.clientX - left, clientY: event.clientY };
    touch(zoneOf(at, { low: ground.rowBottom, width, hand, sweepable }), null);
  };

  return (
    <main
      ref={root}
      tabIndex={-1}
      class={`stage ${hand}-hand edge-${moment ? edge : 'none'}${awake ? '' : ' asleep'}`}
      aria-label={say.performance.theStage}
      style={{
        '--row-top': `${ground.rowTop}px`,
        '--sweep-top': `${ground.sweepTop}px`,
        '--answer-top': `${ground.answerTop}px`,
        '--answer-high': `${ground.answerHeight}px`,
      }}
      onPointerMove={(event) => {
        if (event.pointerType === 'mouse') wake();
        drag.move(event);
      }}
      onPointerDown={(event) => {
        if (sweepable && layout && event.clientY > ground.rowBottom) {
          const { left, width } = event.currentTarget.getBoundingClientRect();
          drag.start(event, left + width / 2, layout.from * layout.size, layout.to * layout.size);
        }
      }}
      onPointerUp={onPointerUp}
      onPointerCancel={(event) => drag.end(event)}
    >
      <p class="for-ears" role="status">
        {momentName(moment, standing)}
      </p>
      {layout && moment && !standing.paused && (
        <>
          {standing.turn !== null && <TurnPicture turn={standing.turn} class="whose-turn" />}
          {moment.part === 'auditory' && !standing.spellings ? (
            <div class="writing-line" role="img" aria-label={say.performance.aLineToWrite} />
          ) : (
            <Row
              key={moment.part === 'blending' ? 'run' : standing.at}
              pieces={moment.pieces}
              cards={cardPlaces(moment)}
              layout={layout}
              open={open}
              lit={moment.part === 'visual' && standing.turn !== null ? 0 : lit}
              told={standing.answer || standing.turn !== null || standing.spellings}
              piled={moment.part === 'blending'}
              nudged={nudged}
            />
          )}
          {moment.part === 'blending' && (
            <Sweep
              key={standing.at}
              from={layout.from * layout.size}
              to={
                sweptTo(layout, blending === 'joined' ? open : moment.pieces.length) * layout.size
              }
              thick={ground.sweepThick}
              pace={sweepPace}
              count={standing.sweeps}
              drawn={drawnSweep.at === standing.at ? drawnSweep.count : 0}
              line={drag.line}
            />
          )}
          {moment.part === 'blending' && standing.answer && (
            <Answer real={moment.flip.kind === 'real'} />
          )}
          <Ticks moments={all} standing={standing} />
        </>
      )}
      {edge !== 'none' && moment && !standing.paused && (
        <Edge where={edge} moment={moment} next={next} onWish={onWish} />
      )}
      {all.length === 0 && (
        <div class="end of-nothing">
          <p class="end-small">{say.performance.nothingWasTaughtYet}</p>
          <a class="button next" href={linkTo('learned')} onClick={leaveFullScreen}>
            {say.performance.whatHaveTheyLearned}
          </a>
        </div>
      )}
      {isFirstTime && moment && !standing.paused && (
        <p class="first-time">{say.performance.aTapTheSpace(<kbd class="key">?</kbd>)}</p>
      )}
      {!moment && all.length > 0 && (
        <>
          <AtRest drill={drill} />
          <End now={now} moments={all} led={led} />
          <Ticks moments={all} standing={standing} />
        </>
      )}
      <Controls
        moment={moment}
        blending={blending}
        paused={standing.paused}
        led={led}
        awake={awake}
        onWake={toggle}
        onWish={onWish}
      />
      {keysShown && <KeySheet where="stage" onClose={() => setKeysShown(false)} />}
    </main>
  );
}

/** What the keys of a wall do. */
const WALL_WISHES: ReadonlySet<KeyWish> = new Set<KeyWish>([
  ...(['next', 'back', 'sweep', 'pause'] as const),
  ...(['leave', 'full-screen', 'show', 'keys'] as const),
]);

/** Whether the desk has opened this window, for the projector, and is still there. */
function isOpenedByDesk(): boolean {
  return opener !== null && !(opener as Window).closed;
}

/** Whether she has gone on once on the stage: until then a line there says how. */
const knowsStage = remembered('knows-stage', boolean(), false);

/** Before the letters are measured nothing is drawn. */
const noSpace = { width: 0, height: 0 };

/** Back to the plan, or at the end to how it went; the window that the desk opened for the stage is closed. */
function leaveStage(led: boolean, over: boolean): void {
  leaveFullScreen();
  if (wall.peek() !== null) wall.peek()?.forget();
  else if (led && opener) close();
  else goTo(over ? 'after' : 'today');
}
