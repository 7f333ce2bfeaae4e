import { classId, eventId } from '../ids.ts';
import { LATEST } from './clock.ts';
import type { LogEvent } from './event.ts';
import { isObject, isWhole } from './is-value.ts';

/** Why something is no event: the first field that is missing or wrong, and a sentence. */
export interface EventError {
  readonly code: 'not-an-event';
  readonly field: keyof LogEvent | null;
  readonly message: string;
}

/**
 * Reads an event that came from a file, a store or another window. Only what
 * every event has is checked here: an event of a kind that a newer version
 * writes is an event and must not be lost. What it says is checked by
 * `understand`.
 */
export function parseEvent(
  value: unknown,
): { readonly event: LogEvent } | { readonly error: EventError } {
  if (!isObject(value)) return failure(null, 'There is no event here.');
  const { id, classId: ofClass, at, by, kind, body } = value;
  if (!isName(id)) return failure('id', 'The event has no id.');
  if (!isName(ofClass)) return failure('classId', 'The event does not say for which class it is.');
  if (!isTime(at)) return failure('at', 'The event does not say when it was.');
  if (!isName(by)) return failure('by', 'The event does not say which device wrote it.');
  if (!isName(kind)) return failure('kind', 'The event does not say what happened.');
  if (!isObject(body)) return failure('body', 'The event says nothing.');
  return { event: { id: eventId(id), classId: classId(ofClass), at, by, kind, body } };
}

/** Whether a value is an event, as `parseEvent` asks: for the many that come from a store. */
export function isEvent(value: unknown): value is LogEvent {
  if (!isObject(value)) return false;
  const { id, classId, at, by, kind, body } = value;
  return (
    isName(id) && isName(classId) && isTime(at) && isName(by) && isName(kind) && isObject(body)
  );
}

const isTime = isWhole(0, LATEST);

function isName(value: unknown): value is string {
  return typeof value === 'string' && value !== '' && value.length <= 100;
}

function failure(field: EventError['field'], message: string): { readonly error: EventError } {
  return { error: { code: 'not-an-event', field, message } };
}
