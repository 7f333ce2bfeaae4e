import { findAhead } from '../../../core/log/ahead.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import type { EventStore, StoreError } from '../../../core/log/event-store.ts';
import {
  type DamagedLine,
  type LogFileError,
  makeLog,
  parseLog,
} from '../../../core/log/log-file.ts';
import { isLocked, type LockError, lockText, unlockText } from './lock.ts';
import { datingsOf, type Stamping } from './stamping.ts';

/** What a file brought. */
export interface Imported {
  /** Events that were new here. */
  readonly added: number;
  /** Events that were here already. */
  readonly known: number;
  /** The classes that the file tells of. */
  readonly classIds: readonly string[];
  /** Lines that could not be read, to be shown and kept aside. */
  readonly damaged: readonly DamagedLine[];
  /** Events of a newer version, kept though nothing here shows them. */
  readonly notUnderstood: number;
  /** New events that a wrong clock had stamped; when they count was set right. */
  readonly setRight: number;
}

/**
 * Why a file brought nothing; `locked` asks for its passphrase, `ahead` for a look at the clock, here or
 * there.
 */
export type ImportError =
  | LogFileError
  | LockError
  | StoreError
  | { readonly code: 'locked' | 'ahead'; readonly message: string };

/** Events as the text of one file, locked when there is a passphrase. */
export async function exportLog(
  events: readonly LogEvent[],
  passphrase: string | null,
): Promise<{ readonly text: string } | { readonly error: LockError }> {
  const text = makeLog(events);
  if (passphrase === null) return { text };
  const outcome = await lockText(text, passphrase);
  return 'locked' in outcome ? { text: outcome.locked } : outcome;
}

/**
 * Takes every good event of a file into the store. What is there already is
 * left as it is, so the same file a second time changes nothing. What a wrong
 * clock stamped far ahead comes in and counts as of now; where this device's
 * clock may be the wrong one, nothing comes in before that is settled.
 */
export async function importLog(
  store: EventStore,
  text: string,
  passphrase: string | null,
  stamping: Stamping,
): Promise<Imported | { readonly error: ImportError }> {
  if (isLocked(text)) {
    if (passphrase === null) return { error: needsPassphrase };
    const opened = await unlockText(text, passphrase);
    return 'text' in opened ? importLog(store, opened.text, null, stamping) : opened;
  }
  const log = parseLog(text);
  if ('error' in log) return log;
  const classIds = [...new Set(log.events.map(({ classId }) => classId))];
  const fresh: LogEvent[] = [];
  const said: LogEvent[] = [];
  for (const classId of classIds) {
    const here = await store.eventsOf(classId);
    if ('error' in here) return here;
    const known = new Set(here.events.map(({ id }) => id));
    const came = log.events.filter((event) => event.classId === classId && !known.has(event.id));
    const { right, doubtful } = findAhead([...here.events, ...came], stamping.now());
    if (came.some(({ id }) => doubtful.has(id))) return { error: isAhead };
    fresh.push(...came);
    said.push(...datingsOf(right, classId, stamping));
  }
  const outcome = fresh.length === 0 ? { kept: true } : await store.append([...fresh, ...said]);
  if ('error' in outcome) return outcome;
  const { damaged, notUnderstood } = log;
  return {
    added: fresh.length,
    known: log.events.length - fresh.length,
    classIds,
    damaged,
    notUnderstood,
    setRight: said.length,
  };
}

const isAhead = {
  code: 'ahead',
  message:
    'This file tells of days that have not come yet by the clock of this device. Set the date and time of this device right and bring the file in again.',
} as const;

const needsPassphrase = {
  code: 'locked',
  message: 'This file is locked. Type the passphrase it was saved with.',
} as const;
