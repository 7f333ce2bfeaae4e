import { type ClassId, eventId } from '../../../core/ids.ts';
import type { EventBodies, EventSpec, LogEvent } from '../../../core/log/event.ts';

/** What an event needs besides what it says. Time and ids come from outside. */
export interface Stamping {
  /** This device. */
  readonly device: string;
  /** Milliseconds since 1970, as the device's clock has them; it may be set back. */
  readonly now: () => number;
  /** An id that was never given before. */
  readonly newId: () => string;
}

/** Events that say when others really were (core/log/ahead.ts). */
export function datingsOf(
  right: readonly EventBodies['dated'][],
  classId: ClassId,
  { device, now, newId }: Stamping,
): readonly LogEvent[] {
  const at = Math.floor(now());
  return right.map((body): LogEvent => {
    const spec: EventSpec = { kind: 'dated', body };
    return { id: eventId(newId()), classId, at, by: device, ...spec };
  });
}
