import { goTo } from '../app/route.ts';
import type { Drill } from '../engine.ts';
import { enterFullScreen } from '../stage/full-screen.ts';
import { lastPlace } from '../stage/place.ts';

/** The one next step: onto the stage; or on from where she stopped. */
export function Start({ drill }: { readonly drill: Drill }) {
  const { seed, at } = lastPlace.value;
  const total = drill.visual.length + drill.auditory.length + drill.run.length;
  const under = seed === drill.seed && at > 0 && at < total;
  const start = (from: number) => {
    if (from === 0) lastPlace.value = { seed: drill.seed, at: 0, skipped: [] };
    enterFullScreen();
    goTo('stage');
  };
  return (
    <>
      {under && (
        <button type="button" class="button" onClick={() => start(at)}>
          Go on where you stopped
        </button>
      )}
      <button type="button" class="button next" onClick={() => start(0)} disabled={total === 0}>
        Start on the stage
      </button>
    </>
  );
}
