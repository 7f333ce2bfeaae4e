import type { LogEvent } from './event.ts';

/**
 * Whether two events of one id say the same, their fields in the same order, as every copy keeps them. Only
 * a file changed by hand, or a fault, gives one id to two events.
 */
export function saySame(one: LogEvent, other: LogEvent): boolean {
  return (
    one === other ||
    (one.at === other.at && one.kind === other.kind && textOf(one) === textOf(other))
  );
}

function textOf({ classId, by, body }: LogEvent): string {
  return JSON.stringify([classId, by, body]);
}
