import './ticks.css';
import type { Moment } from '../../../core/warm-up/moments.ts';
import type { Standing } from '../../../core/warm-up/standing.ts';

/** The only progress on the stage: one tick for each card, sound or flip of this part. */
export function Ticks({
  moments,
  standing,
}: {
  readonly moments: readonly Moment[];
  readonly standing: Standing;
}) {
  const { order, at } = standing;
  const partOf = (place: number) => moments[order[place] ?? -1]?.part;
  const part = partOf(at) ?? 'blending';
  const places = order.map((_, place) => place).filter((place) => partOf(place) === part);
  return (
    <div class={`ticks ${part}-ticks`} aria-hidden="true">
      {places.map((place) => (
        <span key={place} class={tickClass(place, standing)} />
      ))}
    </div>
  );
}

function tickClass(place: number, { at, skipped }: Standing): string {
  if (skipped.includes(place)) return 'skipped';
  if (place === at) return 'current';
  return place < at ? 'past' : '';
}
