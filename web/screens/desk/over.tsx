import type { Running } from '../../../core/warm-up/run-state.ts';
import { countSaid } from '../../controls/end.tsx';
import { linkTo } from '../../state/route.ts';
import { moments, recordNow } from '../../warm-up/running.ts';
import { Before } from './before.tsx';

/** The end: how many there were, what was marked, and on to how it went. */
export function Over({ now: { standing, rehearsed } }: { readonly now: Running }) {
  const looked = rehearsed !== null;
  const marks = recordNow.value?.marks.length ?? 0;
  return (
    <main class="desk-main desk-over">
      <section class="desk-now" aria-label="The end">
        <p class="desk-word">{countSaid(moments.value, standing)}</p>
        <p class="quiet">
          {looked
            ? 'You were just looking: nothing of this was noted.'
            : marks === 0
              ? 'Nothing was marked: it all went well.'
              : `You marked ${marks === 1 ? 'one thing' : `${marks} things`}.`}
        </p>
        <p class="desk-ways">
          {!looked && (
            <a class="button next" href={linkTo('after')}>
              How it went
            </a>
          )}
          <a class={looked ? 'button next' : 'button'} href={linkTo('today')}>
            Back to the plan
          </a>
        </p>
        <Before />
      </section>
    </main>
  );
}
