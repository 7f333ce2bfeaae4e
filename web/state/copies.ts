import type { ClassId } from '../../core/ids.ts';
import { eventsIn } from '../../core/log/class-events.ts';
import type { LogEvent } from '../../core/log/event.ts';
import type { StoreError } from '../../core/log/event-store.ts';
import { mergeEvents } from '../../core/log/merge.ts';
import type { PacedBy } from '../../core/paced.ts';
import type { LockError } from '../device/log/lock.ts';
import { exportLog } from '../device/log/transfer.ts';
import { saveText } from '../device/save-text.ts';
import type { ListedClass } from './class-list.ts';
import { copyName } from './copy-name.ts';
import { today } from './day.ts';
import { noteCopy } from './last-copy.ts';
import { classState, store } from './open-class.ts';

/** What came of saving a copy: the file's name, or why there is none. */
export type Saved =
  | { readonly name: string }
  | {
      readonly error:
        | StoreError
        | LockError
        | { readonly code: 'empty' | 'not-whole' | 'stopped'; readonly message: string };
    };

/** How a copy is saved: locked by a passphrase or open, and whether the file's name says what is in it. */
export interface CopySpec {
  readonly passphrase: string | null;
  readonly isNamed: boolean;
}

/** A copy for now: open, and its name says nothing of the class. */
export const PLAIN_COPY: CopySpec = { passphrase: null, isNamed: false };

/** Saves classes as one file. */
export async function saveCopy(
  classes: readonly ListedClass[],
  { passphrase, isNamed }: CopySpec,
  pace?: PacedBy,
): Promise<Saved> {
  const events: LogEvent[] = [];
  for (const { classId } of classes) {
    const read = await eventsOf(classId);
    if ('error' in read) return read;
    for (const event of read.events) events.push(event);
  }
  const [first] = classes;
  const what = classes.length === 1 && first ? first.name : 'all classes';
  return save(events, isNamed ? what : null, passphrase, pace);
}

/** Saves the open class with whatever else could not be kept, as this window has it. */
export async function saveWhatIsHere(): Promise<Saved> {
  const state = classState.peek();
  return save(mergeEvents(eventsIn(state), store.unsaved.peek()), null, null);
}

async function save(
  events: readonly LogEvent[],
  says: string | null,
  passphrase: string | null,
  pace?: PacedBy,
): Promise<Saved> {
  // A file with nothing in it would be taken for a copy.
  if (events.length === 0) return { error: nothing };
  const outcome = await exportLog(events, passphrase, pace);
  if ('error' in outcome) return outcome;
  const name = copyName({ day: today(), isLocked: passphrase !== null, says });
  saveText(name, outcome.text, 'application/x-ndjson');
  if (!outcome.readsBack) return { error: { code: 'not-whole', message: notWhole(name) } };
  noteCopy(new Set(events.map(({ classId }) => classId)), today());
  return { name };
}

const nothing = {
  code: 'empty',
  message:
    'Nothing could be read to save, so no file was made. Load the page again and try once more.',
} as const;

function notWhole(name: string): string {
  return `A file was made as ${name}, but read back it does not give all that is here. Keep your older copies too, load the page again, and save once more.`;
}

/** All events of a class. Of the open one as this window has them, even when the store cannot be reached. */
async function eventsOf(
  classId: ClassId,
): Promise<{ readonly events: readonly LogEvent[] } | { readonly error: StoreError }> {
  const state = classState.peek();
  return classId === state.id ? { events: eventsIn(state) } : store.eventsOf(classId);
}
