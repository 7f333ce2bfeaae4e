import './today.css';
import { useEffect } from 'preact/hooks';
import { drillsOf } from '../../../core/log/recent.ts';
import { engine, startEngine } from '../../state/engine-ready.ts';
import { classState, group } from '../../state/open-class.ts';
import { drill, ensureDrill, freshSeed, remakeDrill, wishes } from '../../state/plan.ts';
import { linkTo } from '../../state/route.ts';
import { counted } from '../../wording/counted.ts';
import { Auditory } from './auditory.tsx';
import { Blending } from './blending.tsx';
import { Start } from './start.tsx';
import { Visual } from './visual.tsx';

/** Today's warm-up: its three parts on one page, each thing in it hers to change. */
export function Today() {
  const ready = engine.value;
  const now = drill.value;
  const hasRun = drillsOf(classState.value, group.value.id).length > 0;
  useEffect(() => ensureDrill(freshSeed()), [ready, now]);

  return (
    <>
      <div class="today-head">
        <div>
          <h1>Today’s warm-up</h1>
          <p class="quiet">
            {now
              ? `${counted(now.visual.length, 'card')}, ${counted(now.auditory.length, 'sound')}, ${counted(now.run.length, 'flip')}`
              : waiting(ready)}
          </p>
          <p class="today-ways">
            {hasRun && <a href={linkTo('after')}>How it went</a>}
            {now && <a href={linkTo('plan')}>Plan for a substitute</a>}
          </p>
        </div>
        <p class="today-tools">
          {ready === 'failed' && (
            <button type="button" class="button" onClick={startEngine}>
              Try again
            </button>
          )}
          {now && (
            <button
              type="button"
              class="button"
              onClick={() => remakeDrill(wishes.peek(), freshSeed(), 'Reshuffled.')}
            >
              Reshuffle
            </button>
          )}
          {now && <Start drill={now} />}
        </p>
      </div>
      {now?.shortfall && (
        <div class="shortfall" role="note">
          <p>{now.shortfall.message}</p>
          <a class={now.run.length === 0 ? 'button next' : 'button'} href={linkTo('learned')}>
            What have they learned?
          </a>
        </div>
      )}
      {now && (
        <div class="parts">
          <Visual drill={now} />
          <Auditory drill={now} />
          <Blending drill={now} />
        </div>
      )}
    </>
  );
}

function waiting(ready: typeof engine.value): string {
  if (ready === 'failed') {
    return 'The word list did not arrive. Once it has been loaded, everything works without a network.';
  }
  return 'Fetching the word list …';
}
