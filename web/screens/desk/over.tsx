import type { Running } from '../../../core/warm-up/run-state.ts';
import { countSaid } from '../../controls/end.tsx';
import { linkTo } from '../../state/route.ts';
import { moments, recordNow } from '../../warm-up/running.ts';
import { Before } from './before.tsx';
import { say } from './wording.ts';

/** The end: how many there were, what was marked, and on to how it went. */
export function Over({ now: { standing, rehearsed } }: { readonly now: Running }) {
  const looked = rehearsed !== null;
  const marks = recordNow.value?.marks.length ?? 0;
  return (
    <main class="desk-main desk-over">
      <section class="desk-now" aria-label={say.over.theEnd}>
        <p class="desk-word">{countSaid(moments.value, standing)}</p>
        <p class="quiet">
          {looked
            ? say.over.youWereJustLooking
            : marks === 0
              ? say.over.nothingWasMarked
              : say.over.youMarked(marks === 1 ? say.over.oneThing : say.over.things(marks))}
        </p>
        <p class="desk-ways">
          {!looked && (
            <a class="button next" href={linkTo('after')}>
              {say.over.howItWent}
            </a>
          )}
          <a class={looked ? 'button next' : 'button'} href={linkTo('today')}>
            {say.over.backToThePlan}
          </a>
        </p>
        <Before />
      </section>
    </main>
  );
}
