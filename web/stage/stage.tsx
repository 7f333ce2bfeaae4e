import './stage.css';
import { useEffect } from 'preact/hooks';
import { engine } from '../app/engine-ready.ts';
import { drill, ensureDrill, freshSeed } from '../memory/plan.ts';
import { settings } from '../memory/settings.ts';
import { Performance } from './performance.tsx';

/** The stage: the whole screen, for the children's eyes. */
export function Stage() {
  const { look } = settings.value;
  const now = drill.value;
  const ready = engine.value;

  useEffect(() => {
    document.documentElement.dataset.look = look;
    return () => {
      delete document.documentElement.dataset.look;
    };
  }, [look]);

  useEffect(() => ensureDrill(freshSeed()), [ready, now]);

  if (now) return <Performance drill={now} />;
  return (
    <main class="stage">
      <div class="end">
        {ready === 'failed' ? (
          <>
            <p>The word list is not here yet.</p>
            <a class="button next" href="#/today">
              Back to the plan
            </a>
          </>
        ) : (
          <span class="for-ears" role="status">
            Getting ready
          </span>
        )}
      </div>
    </main>
  );
}
