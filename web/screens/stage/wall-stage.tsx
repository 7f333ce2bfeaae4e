import { useEffect } from 'preact/hooks';
import { useLook } from '../../controls/use-look.ts';
import { enterFullScreen } from '../../device/full-screen.ts';
import { linkTo } from '../../state/route.ts';
import { forgotten, wall } from '../../state/wall.ts';
import { askOthers, leaveIt } from '../../warm-up/lead-here.ts';
import { running } from '../../warm-up/running.ts';
import { useRole } from '../../warm-up/windows.ts';
import { Performance } from './performance.tsx';

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
        <p role="status">This screen shows the warm-up as soon as your desk begins one.</p>
        <p class="quiet">It knows no names, notes nothing, and forgets the warm-up afterwards.</p>
        <button type="button" class="button next" onClick={enterFullScreen}>
          Fill the screen
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
            ? 'This screen was taken out of the class. Nothing of it is kept here.'
            : 'The warm-up is over, and this screen has forgotten it.'}
        </p>
        <a class="button next" href={linkTo('join')}>
          Show another
        </a>
      </div>
    </main>
  );
}
