import type { Drill } from '../../../core/drills/drill.ts';
import { enterFullScreen } from '../../device/full-screen.ts';
import { goTo } from '../../state/route.ts';
import { openStage } from '../../state/stage-window.ts';
import { finish, resume, start, unfinished } from '../../warm-up/running.ts';
import { goOnOrStart } from '../../warm-up/take-up.ts';

/**
 * The one next step: onto the stage, or on from where she stopped; or, with a
 * second screen, the desk for her and the stage in a window of its own.
 */
export function Start({ drill }: { readonly drill: Drill }) {
  const begun = unfinished.value;
  const empty = drill.visual.length + drill.auditory.length + drill.run.length === 0;
  const onto = (what: () => void) => {
    what();
    enterFullScreen();
    goTo('stage');
  };
  return (
    <>
      {begun && (
        <button type="button" class="button" onClick={() => onto(() => resume(begun))}>
          Go on where you stopped
        </button>
      )}
      <button
        type="button"
        class="button"
        disabled={empty}
        onClick={() => {
          goOnOrStart(drill);
          openStage();
          goTo('desk');
        }}
      >
        Open the desk
      </button>
      <button
        type="button"
        class="button next"
        onClick={() =>
          onto(() => {
            finish();
            start(drill);
          })
        }
        disabled={empty}
      >
        Start on the stage
      </button>
    </>
  );
}
