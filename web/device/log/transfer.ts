import type { ClassId } from '../../../core/ids.ts';
import { findAhead } from '../../../core/log/ahead.ts';
import { erasedWith, isErased } from '../../../core/log/erased.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import type { EventStore, StoreError } from '../../../core/log/event-store.ts';
import {
  type DamagedLine,
  type LogFileError,
  makeLogPaced,
  parseLogPaced,
} from '../../../core/log/log-file.ts';
import { readsBackPaced } from '../../../core/log/reads-back.ts';
import { saySame } from '../../../core/log/say-same.ts';
import { atOnce, type PacedBy, pacedEach } from '../../../core/paced.ts';
import { isLocked, type LockError, lockText, unlockText } from './lock.ts';
import { datingsOf, type Stamping } from './stamping.ts';

/** What a file brought. */
export interface Imported {
  /** Events that were new here. */
  readonly added: number;
  /** Events that were here already. */
  readonly known: number;
  /** Events about what was deleted here for good, which stayed out. */
  readonly erased: number;
  /** The classes that the file tells of. */
  readonly classIds: readonly ClassId[];
  /** Lines that could not be read, to be shown and kept aside. */
  readonly damaged: readonly DamagedLine[];
  /** Events of a newer version, kept though nothing here shows them. */
  readonly notUnderstood: number;
  /** New events that a wrong clock had stamped; when they count was set right. */
  readonly setRight: number;
  /** Whether the file was as it was saved; null when it does not say. */
  readonly isWhole: boolean | null;
  /** Events that were here already by their ids and say something else; what was here stands. */
  readonly twofold: number;
}

/** What bringing a file in asks of a store. */
export type TakingIn = Pick<EventStore, 'append' | 'eventsOf' | 'classes' | 'recall'>;

/**
 * Why a file brought nothing; `locked` asks for its passphrase, `ahead` for a look at the clock, here or
 * there, `deleted` whether a class that was deleted here should come back.
 */
export type ImportError =
  | LogFileError
  | LockError
  | StoreError
  | { readonly code: 'locked' | 'ahead' | 'deleted' | 'stopped'; readonly message: string };

/** How a file is brought in: in its own time, and perhaps with a class that was deleted here. */
export interface ImportSpec {
  /** Does the long parts; where it stops, nothing has come in. */
  readonly pace?: PacedBy;
  /** Is told that from now on nothing can be stopped any more. */
  readonly onKeeping?: () => void;
  /** Whether a class that was deleted here comes back. */
  readonly recalls?: boolean;
}

/**
 * Events as the text of one file, locked when there is a passphrase, and whether it reads back as what was
 * put in: opened again if it is locked, read as any file is, and compared by count and check number.
 */
export async function exportLog(
  events: readonly LogEvent[],
  passphrase: string | null,
  pace: PacedBy = withoutPause,
): Promise<
  | { readonly text: string; readonly readsBack: boolean }
  | { readonly error: LockError | { readonly code: 'stopped'; readonly message: string } }
> {
  const log = await pace(makeLogPaced(events));
  if (log === null) return { error: saveStopped };
  const outcome = passphrase === null ? { locked: log } : await lockText(log, passphrase);
  if ('error' in outcome) return outcome;
  const { locked } = outcome;
  const opened = passphrase === null ? { text: log } : await unlockText(locked, passphrase);
  if ('error' in opened) return { text: locked, readsBack: false };
  const isSame = await pace(readsBackPaced(opened.text, events));
  return isSame === null ? { error: saveStopped } : { text: locked, readsBack: isSame };
}

/**
 * Takes every good event of a file into the store. What is there already is
 * left as it is, so the same file a second time changes nothing. What a wrong
 * clock stamped far ahead comes in and counts as of now; where this device's
 * clock may be the wrong one, nothing comes in before that is settled. A class
 * that was deleted here comes back only when she `recalls` it.
 */
export async function importLog(
  store: TakingIn,
  text: string,
  passphrase: string | null,
  stamping: Stamping,
  spec: ImportSpec = {},
): Promise<Imported | { readonly error: ImportError }> {
  const { pace = withoutPause, recalls = false } = spec;
  if (isLocked(text)) {
    if (passphrase === null) return { error: needsPassphrase };
    const opened = await unlockText(text, passphrase);
    return 'text' in opened ? importLog(store, opened.text, null, stamping, spec) : opened;
  }
  const log = await pace(parseLogPaced(text));
  if (log === null) return { error: importStopped };
  if ('error' in log) return log;
  const classIds = [...new Set(log.events.map(({ classId }) => classId))];
  const listed = await store.classes();
  if ('error' in listed) return listed;
  const deleted = listed.forgotten.filter((classId) => classIds.includes(classId));
  if (deleted.length > 0 && !recalls) return { error: wasDeleted };
  const fresh: LogEvent[] = [];
  let twofold = 0;
  let erased = 0;
  const said: LogEvent[] = [];
  for (const classId of classIds) {
    const here = await store.eventsOf(classId);
    if ('error' in here) return here;
    const known = new Map(here.events.map((event) => [event.id, event]));
    const all: LogEvent[] = [];
    const compared = pacedEach(log.events, (event) => {
      if (event.classId !== classId) return;
      const other = known.get(event.id);
      if (other === undefined) all.push(event);
      else if (!saySame(event, other)) twofold += 1;
    });
    if ((await pace(compared)) === null) return { error: importStopped };
    const gone = erasedWith(here.erased?.size ? all : [], here.erased ?? []);
    const came = all.filter((event) => !isErased(event, gone));
    erased += all.length - came.length;
    const { right, doubtful } = findAhead([...here.events, ...came], stamping.now());
    if (came.some(({ id }) => doubtful.has(id))) return { error: isAhead };
    for (const event of came) fresh.push(event);
    for (const event of datingsOf(right, classId, stamping)) said.push(event);
  }
  spec.onKeeping?.();
  for (const classId of deleted) {
    const recalled = await store.recall(classId);
    if ('error' in recalled) return recalled;
  }
  const outcome = fresh.length === 0 ? { kept: true } : await store.append([...fresh, ...said]);
  if ('error' in outcome) return outcome;
  const { damaged, notUnderstood, isWhole } = log;
  return {
    added: fresh.length,
    known: log.events.length - fresh.length - erased,
    erased,
    classIds,
    damaged,
    notUnderstood,
    isWhole,
    setRight: said.length,
    twofold,
  };
}

const withoutPause: PacedBy = async (work) => atOnce(work);

const saveStopped = { code: 'stopped', message: 'Stopped. No file was made.' } as const;

const importStopped = { code: 'stopped', message: 'Stopped. Nothing was brought in.' } as const;

const isAhead = {
  code: 'ahead',
  message:
    'This file tells of days that have not come yet by the clock of this device. Set the date and time of this device right and bring the file in again.',
} as const;

const wasDeleted = {
  code: 'deleted',
  message:
    'This file holds a class that was deleted on this device. Bring it back only if you want it here again.',
} as const;

const needsPassphrase = {
  code: 'locked',
  message: 'This file is locked. Type the passphrase it was saved with.',
} as const;
