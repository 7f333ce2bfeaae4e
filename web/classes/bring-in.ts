import { ownStamping } from '../log/device-log.ts';
import { type ImportError, type Imported, importLog } from '../log/transfer.ts';
import { classState, openClass, reopenClass, store } from '../memory/open-class.ts';
import { classList, refreshClasses } from './class-list.ts';

/** What a file brought, or why it brought nothing. */
export type Brought =
  | Imported
  | { readonly error: ImportError | { readonly code: 'unreadable'; readonly message: string } };

/**
 * Takes a file into the store and shows what it brought: the open class is read
 * anew; where nothing was begun yet, the class that came is opened.
 */
export async function bringIn(text: string, passphrase: string | null): Promise<Brought> {
  const brought = await importLog(store, text, passphrase, ownStamping());
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
