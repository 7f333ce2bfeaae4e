import { type ClassId, classId } from '../../../core/ids.ts';
import type { EventSpec } from '../../../core/log/event.ts';
import { makeInTurn } from '../../device/in-turn.ts';
import { openClass as openOnDevice } from '../../device/log/device-log.ts';
import { newId } from '../../device/log/ids.ts';
import { type ListedClass, nameOfClass, refreshClasses } from '../../state/class-list.ts';
import { openAnother } from '../../state/forget-class.ts';
import { classState, openClass, record, recordUndoable, store } from '../../state/open-class.ts';
import { noteUndo } from '../../state/undo.ts';
import { say } from './wording.ts';

/** Begins a class and opens it. */
export function addClass(name: string): Promise<void> {
  return inTurn(async () => {
    await openClass(classId(newId()));
    const { id } = classState.peek();
    record({ kind: 'set', body: { of: 'class', id, field: 'name', value: name } });
    await refreshClasses();
  });
}

/** Names the open class; can be undone. */
export function renameClass(name: string): void {
  const { id } = classState.peek();
  recordUndoable(name === '' ? say.classActs.theClassHasNo : say.classActs.theClassIsNow(name), {
    kind: 'set',
    body: { of: 'class', id, field: 'name', value: name },
  });
}

/** Puts a class away; of the open one another takes the place. Can be undone. */
export function putAway(listed: ListedClass): Promise<void> {
  const { classId } = listed;
  return inTurn(async () => {
    const wasOpen = classId === classState.peek().id;
    await recordIn(classId, archiving(classId, true));
    if (wasOpen) await openAnother(classId);
    await refreshClasses();
    noteUndo(say.classActs.archived(nameOfClass(listed)), () => bringBack(classId, wasOpen));
  });
}

/** Takes a class that was put away into use again, and opens it. */
export function takeOut(classId: ClassId): Promise<void> {
  return bringBack(classId, true);
}

/** In turn, so that the class that takes another's place is looked for when those brought back are there. */
const inTurn = makeInTurn();

function bringBack(classId: ClassId, isOpened: boolean): Promise<void> {
  return inTurn(async () => {
    await recordIn(classId, archiving(classId, false));
    if (isOpened) await openClass(classId);
    await refreshClasses();
  });
}

async function recordIn(classId: ClassId, spec: EventSpec): Promise<void> {
  if (classId === classState.peek().id) {
    record(spec);
    return;
  }
  const log = await openOnDevice(store, classId);
  await log.record(spec).kept;
  log.close();
}

function archiving(id: ClassId, value: boolean): EventSpec {
  return { kind: 'set', body: { of: 'class', id, field: 'archived', value } };
}
