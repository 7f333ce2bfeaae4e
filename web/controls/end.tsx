import './end.css';
import type { Moment } from '../../core/warm-up/moments.ts';
import type { Running } from '../../core/warm-up/run-state.ts';
import type { Standing } from '../../core/warm-up/standing.ts';
import { leaveFullScreen } from '../device/full-screen.ts';
import { linkTo } from '../state/route.ts';
import { say } from './wording.ts';

/** The plain end: how many there were, and how it went; before the children alone only the former. */
export function End({
  now: { standing, rehearsed },
  moments,
  led,
}: {
  readonly now: Pick<Running, 'standing' | 'rehearsed'>;
  readonly moments: readonly Moment[];
  readonly led: boolean;
}) {
  const looked = rehearsed !== null;
  return (
    <div class="end">
      <p>{countSaid(moments, standing)}</p>
      {!led && (
        <div class="end-ways">
          {!looked && (
            <a class="button next" href={linkTo('after')} onClick={leaveFullScreen}>
              {say.end.howItWent}
            </a>
          )}
          <a
            class={looked ? 'button next' : 'button plain'}
            href={linkTo('today')}
            onClick={leaveFullScreen}
          >
            {say.end.backToThePlan}
          </a>
        </div>
      )}
    </div>
  );
}

/** How many words were blended: `That was 30.` */
export function countSaid(
  moments: readonly Moment[],
  { order, skipped }: Pick<Standing, 'order' | 'skipped'>,
): string {
  const blended = order.filter(
    (moment, place) => moments[moment]?.part === 'blending' && !skipped.includes(place),
  ).length;
  return blended > 0 ? say.end.thatWas(blended) : say.end.thatWasAll;
}
