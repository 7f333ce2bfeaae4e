import type { EventId } from '../../core/ids.ts';
import { eventsOf } from '../../core/log/facts.ts';
import { deviceId } from '../device/log/ids.ts';
import { classState, sharedAs } from './open-class.ts';

/** What the device is called on which a mark was made; null for this one, and where there is no other. */
export function markedOn(mark: EventId): string | null {
  const { devices, facts } = classState.value;
  if (sharedAs.value === null || devices.size < 2) return null;
  const event = eventsOf(facts).findLast(({ id }) => id === mark);
  const own = sharedAs.value.by || deviceId();
  return event && event.by !== own ? (devices.get(event.by) ?? null) : null;
}
