import type { Moment } from './moments.ts';

/** The plain end: how many there were, and the way back. */
export function End({
  moments,
  skipped,
  onLeave,
}: {
  readonly moments: readonly Moment[];
  readonly skipped: ReadonlySet<number>;
  readonly onLeave: () => void;
}) {
  const blended = moments.filter(
    ({ part }, place) => part === 'blending' && !skipped.has(place),
  ).length;
  return (
    <div class="end">
      <p>{blended > 0 ? `That was ${blended}.` : 'That was all.'}</p>
      <button type="button" class="button next" onClick={onLeave}>
        Back to the plan
      </button>
    </div>
  );
}
