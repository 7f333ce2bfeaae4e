import { useEffect } from 'preact/hooks';
import { useLook } from '../../controls/use-look.ts';
import { enterFullScreen } from '../../device/full-screen.ts';
import { linkTo } from '../../state/route.ts';
import { forgotten, wall } from '../../state/wall.ts';
import { askOthers, leaveIt } from '../../warm-up/lead-here.ts';
import { running } from '../../warm-up/running.ts';
import { useRole } from '../../warm-up/windows.ts';
import { Performance } from './performance.tsx';
import { say } from './wording.ts';

/** The stage on a screen that is only a wall: it waits for the warm-up, shows it, and forgets it. */
export function WallStage() {
  const now = running.value;
  useRole('stage');
  useLook();
  useEffect(() => {
    leaveIt();
    askOthers();
    return () => {
      wall.peek()?.forget();
      leaveIt();
    };
  }, []);
  if (wall.value === null) return <Forgot />;
  if (now) return <Performance key={now.drillId} now={now} />;
  return (
    <main class="stage">
      <div class="end of-nothing">
        <p role="status">{say.wallStage.thisScreenShows}</p>
        <p class="quiet">{say.wallStage.itKnowsNoNames}</p>
        <button type="button" class="button next" onClick={enterFullScreen}>
          {say.wallStage.fillTheScreen}
        </button>
      </div>
    </main>
  );
}

function Forgot() {
  useEffect(leaveIt, []);
  return (
    <main class="stage">
      <div class="end of-nothing">
        <p role="status">
          {forgotten.value === 'removed'
            ? say.wallStage.thisScreenWasTaken
            : say.wallStage.theWarmUp}
        </p>
        <a class="button next" href={linkTo('join')}>
          {say.wallStage.showAnother}
        </a>
      </div>
    </main>
  );
}
