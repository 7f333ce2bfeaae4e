import { ownStamping } from '../../device/log/device-log.ts';
import {
  type ImportError,
  type Imported,
  type ImportSpec,
  importLog,
} from '../../device/log/transfer.ts';
import { classList, refreshClasses } from '../../state/class-list.ts';
import { classState, openClass, reopenClass, store } from '../../state/open-class.ts';

/** What a file brought, or why it brought nothing. */
export type Brought =
  | Imported
  | { readonly error: ImportError | { readonly code: 'unreadable'; readonly message: string } };

/**
 * Takes a file into the store and shows what it brought: the open class is read
 * again; where nothing was begun yet, the class that came is opened.
 */
export async function bringIn(
  text: string,
  passphrase: string | null,
  spec: ImportSpec,
): Promise<Brought> {
  // What does not fit is not held: it is in the file.
  const here = { ...store, append: store.offer };
  const brought = await importLog(here, text, passphrase, ownStamping(), spec);
  if ('error' in brought && brought.error.code === 'stopped') return brought;
  await refreshClasses();
  if (classState.peek().last > 0) {
    await reopenClass();
  } else if (!('error' in brought)) {
    const came = classList.peek().filter(({ classId }) => brought.classIds.includes(classId));
    const first = came.find(({ archived }) => !archived) ?? came[0];
    if (first) await openClass(first.classId);
  }
  return brought;
}
