import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { goTo } from '../app/route.ts';
import type { Drill } from '../engine.ts';
import { setSettings, settings } from '../memory/settings.ts';
import { Answer } from './answer.tsx';
import { useAwake } from './awake.ts';
import { Controls } from './controls.tsx';
import { End } from './end.tsx';
import { keepAwake, leaveFullScreen, onFullScreenLeft, toggleFullScreen } from './full-screen.ts';
import { Glimpse } from './glimpse.tsx';
import { groundOf } from './ground.ts';
import { KeySheet } from './key-sheet.tsx';
import { type Wish, wishOf } from './keys.ts';
import { useLayouts } from './layouts.ts';
import { momentName } from './moment-name.ts';
import { type Moment, momentsOf } from './moments.ts';
import { lastPlace } from './place.ts';
import { zoneOf } from './pointing.ts';
import { Row } from './row.tsx';
import { act, hiddenOf, standingAt } from './standing.ts';
import { Sweep } from './sweep.tsx';
import { useSweepDrag } from './sweep-drag.ts';
import { Ticks } from './ticks.tsx';

/** One warm-up as it is run: keys, touches and the sheet they act on. */
export function Performance({ drill }: { readonly drill: Drill }) {
  const moments = useMemo(() => momentsOf(drill), [drill]);
  const prepared = useLayouts(moments, drill.board.piles.length);
  const { successive, glimpse, hand, sweepPace } = settings.value;
  const manner = { moments, successive };
  const [standing, setStanding] = useState(() => placeIn(drill, moments));
  const [keysShown, setKeysShown] = useState(false);
  const { awake, wake, toggle } = useAwake();
  const root = useRef<HTMLElement>(null);
  const moment = moments[standing.at];

  useEffect(keepAwake, []);
  useEffect(() => root.current?.focus(), []);
  useEffect(() => {
    const { at, skipped } = standing;
    lastPlace.value = { seed: drill.seed, at: at < moments.length ? at : 0, skipped: [...skipped] };
  }, [standing.at, drill.seed]);

  const onWish = (wish: Wish) => {
    if (wish === 'leave') leave();
    else if (wish === 'keys') setKeysShown(true);
    else if (wish === 'successive') setSettings({ successive: !settings.peek().successive });
    else if (wish === 'glimpse') setSettings({ glimpse: !settings.peek().glimpse });
    else if (wish === 'full-screen') toggleFullScreen();
    else setStanding((now) => act(now, wish, manner));
  };

  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.target instanceof Element && event.target.closest('dialog')) return;
      const wish = wishOf(event);
      const onButton = event.target instanceof HTMLButtonElement && isPress(event.key);
      if (wish === null || onButton) return;
      event.preventDefault();
      if (!event.repeat) onWish(wish);
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  });

  useEffect(() => onFullScreenLeft(leave), []);

  const layout = prepared?.layouts[standing.at];
  const swept = moment?.part === 'blending';
  const ground = groundOf(layout, prepared?.space ?? noSpace, swept ? 'swept' : 'alone');
  const drag = useSweepDrag(sweepPace);
  const sweepable = swept && !standing.paused;

  const onPointerUp = (event: PointerEvent) => {
    if (drag.end(event)) return;
    if ((event.target as Element).closest('button, a, dialog')) return;
    const low = ground.rowBottom;
    onWish(zoneOf(event, { low, width: innerWidth, hand, sweepable }));
  };

  return (
    <main
      ref={root}
      tabIndex={-1}
      class={`stage ${hand}-hand${awake ? '' : ' asleep'}`}
      aria-label="The stage"
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
          drag.start(event, layout.from * layout.size, layout.to * layout.size);
        }
      }}
      onPointerUp={onPointerUp}
      onPointerCancel={(event) => drag.end(event)}
    >
      <p class="for-ears" role="status">
        {standing.paused ? 'Blank sheet' : momentName(moment, standing)}
      </p>
      {layout && moment && !standing.paused && (
        <>
          {moment.part === 'auditory' && !standing.spellings ? (
            <div class="writing-line" />
          ) : (
            <Row
              key={moment.part === 'blending' ? 'run' : standing.at}
              pieces={moment.pieces}
              layout={layout}
              open={moment.pieces.length - hiddenOf(standing, manner)}
              piled={moment.part === 'blending'}
            />
          )}
          {moment.part === 'blending' && (
            <Sweep
              key={standing.at}
              from={layout.from * layout.size}
              to={layout.to * layout.size}
              thick={ground.sweepThick}
              pace={sweepPace}
              count={standing.sweeps}
              line={drag.line}
            />
          )}
          {moment.part === 'blending' && standing.answer && (
            <Answer real={moment.flip.kind === 'real'} />
          )}
          <Ticks moments={moments} at={standing.at} skipped={standing.skipped} />
          {glimpse && <Glimpse moment={moment} next={moments[standing.at + 1]} />}
        </>
      )}
      {!moment && <End moments={moments} skipped={standing.skipped} onLeave={leave} />}
      <Controls
        moment={moment}
        paused={standing.paused}
        awake={awake}
        onWake={toggle}
        onWish={onWish}
      />
      {keysShown && <KeySheet onClose={() => setKeysShown(false)} />}
    </main>
  );
}

/** Before the letters are measured nothing is drawn. */
const noSpace = { width: 0, height: 0 };

function placeIn(drill: Drill, moments: readonly Moment[]) {
  const { seed, at, skipped } = lastPlace.peek();
  return seed === drill.seed && at < moments.length
    ? standingAt(at, new Set(skipped))
    : standingAt(0);
}

function leave(): void {
  leaveFullScreen();
  goTo('today');
}

function isPress(key: string): boolean {
  return key === ' ' || key === 'Enter';
}
