import './stage.css';
import { useLook } from '../../controls/use-look.ts';
import { engine } from '../../state/engine-ready.ts';
import { asked } from '../../state/route.ts';
import { AS_WALL } from '../../state/wall.ts';
import { FOLLOWING } from '../../warm-up/lead-here.ts';
import { useWarmUp } from '../../warm-up/take-up.ts';
import { useRole } from '../../warm-up/windows.ts';
import { Performance } from './performance.tsx';
import { WallStage } from './wall-stage.tsx';
import { say } from './wording.ts';

/** The stage: the whole screen, for the children's eyes. */
export function Stage() {
  return asked.value === AS_WALL ? <WallStage /> : <OwnStage />;
}

function OwnStage() {
  const now = useWarmUp();
  useRole('stage');
  useLook();
  if (now) return <Performance key={now.drillId} now={now} />;
  return (
    <main class="stage">
      <div class="end of-nothing">
        {engine.value === 'failed' ? (
          <>
            <p>{say.stage.theWordList}</p>
            <a class="button next" href="#/today">
              {say.stage.backToThePlan}
            </a>
          </>
        ) : asked.value === FOLLOWING ? (
          <p class="quiet" role="status">
            {say.stage.thisScreenShows}
          </p>
        ) : (
          <span class="for-ears" role="status">
            {say.stage.gettingReady}
          </span>
        )}
      </div>
    </main>
  );
}
