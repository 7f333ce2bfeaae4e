import type { Paced } from '../paced.ts';
import type { LogEvent } from './event.ts';
import { makeLogPaced, parseLogPaced } from './log-file.ts';

/**
 * Whether a text that was made of these events gives all of them back, and as they were: it is read as any
 * file that is brought in, no line of it is damaged, the count is that of the events, each once, and what was
 * read has the check number of what was put in, as equal logs give equal texts.
 */
export function* readsBackPaced(text: string, events: readonly LogEvent[]): Paced<boolean> {
  const read = yield* parseLogPaced(text);
  return (
    'events' in read &&
    read.isWhole === true &&
    read.damaged.length === 0 &&
    read.events.length === new Set(events.map(({ id }) => id)).size &&
    lastLine(yield* makeLogPaced(read.events)) === lastLine(yield* makeLogPaced(events))
  );
}

/** The line with the count and the check number. */
function lastLine(log: string): string {
  return log.slice(log.lastIndexOf('\n', log.length - 2));
}
