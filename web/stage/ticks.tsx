import './ticks.css';
import type { Moment } from './moments.ts';

interface TicksProps {
  readonly moments: readonly Moment[];
  readonly at: number;
  readonly skipped: ReadonlySet<number>;
}

/** The only progress on the stage: one tick for each card, sound or flip of this part. */
export function Ticks({ moments, at, skipped }: TicksProps) {
  const part = moments[at]?.part ?? 'blending';
  const first = moments.findIndex((moment) => moment.part === part);
  const total = moments.filter((moment) => moment.part === part).length;
  return (
    <div class={`ticks in-${part}`} aria-hidden="true">
      {Array.from({ length: total }, (_, place) => (
        <span key={place} class={tickClass(first + place, at, skipped)} />
      ))}
    </div>
  );
}

function tickClass(place: number, at: number, skipped: ReadonlySet<number>): string {
  if (skipped.has(place)) return 'skipped';
  if (place === at) return 'now';
  return place < at ? 'done' : '';
}
