import type { LogEvent } from '../../core/log/event.ts';
import type { EventStore, StoreError } from '../../core/log/event-store.ts';
import { type DamagedLine, type LogFileError, makeLog, parseLog } from '../../core/log/log-file.ts';
import { isLocked, type LockError, lockText, unlockText } from './lock.ts';

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
}

/** Why a file brought nothing; `locked` asks for its passphrase. */
export type ImportError =
  | LogFileError
  | LockError
  | StoreError
  | { readonly code: 'locked'; readonly message: string };

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
 * left as it is, so the same file a second time changes nothing.
 */
export async function importLog(
  store: EventStore,
  text: string,
  passphrase: string | null,
): Promise<Imported | { readonly error: ImportError }> {
  if (isLocked(text)) {
    if (passphrase === null) return { error: needsPassphrase };
    const opened = await unlockText(text, passphrase);
    return 'text' in opened ? importLog(store, opened.text, null) : opened;
  }
  const log = parseLog(text);
  if ('error' in log) return log;
  const classIds = [...new Set(log.events.map(({ classId }) => classId))];
  const known = new Set<string>();
  for (const classId of classIds) {
    const here = await store.eventsOf(classId);
    if ('error' in here) return here;
    for (const { id } of here.events) known.add(id);
  }
  const fresh = log.events.filter(({ id }) => !known.has(id));
  const outcome = fresh.length === 0 ? { kept: true } : await store.append(fresh);
  if ('error' in outcome) return outcome;
  const { damaged, notUnderstood } = log;
  return {
    added: fresh.length,
    known: log.events.length - fresh.length,
    classIds,
    damaged,
    notUnderstood,
  };
}

const needsPassphrase = {
  code: 'locked',
  message: 'This file is locked. Type the passphrase it was saved with.',
} as const;
