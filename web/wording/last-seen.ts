import { whenSaid } from './day-name.ts';
import { timeName } from './time-name.ts';

/** When a device was heard of last: `seen today, 9:12`. `at` is in milliseconds, `today` a day. */
export function lastSeenSaid(at: number, today: string): string {
  const day = new Date(at).toLocaleDateString('sv-SE');
  return `seen ${whenSaid(day, today)}, ${timeName(at)}`;
}
