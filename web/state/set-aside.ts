/** What could not be read or kept on this device and was set aside: to be seen, saved and thrown away. */

import { signal } from '@preact/signals';
import { eventId } from '../../core/ids.ts';
import { createAsideShelf, type SetAside } from '../device/log/set-aside.ts';
import { saveText } from '../device/save-text.ts';
import { asideCopies, throwAsideAway } from '../device/shelf.ts';
import { store } from './open-class.ts';

/** A piece that was set aside, and why: for the classes' see `SetAside`; other things are `remembered`. */
export interface AsidePiece {
  readonly reason: SetAside['reason'] | 'remembered' | 'unkeepable';
  readonly text: string;
  readonly place: SetAside['place'];
}

const shelf = createAsideShelf();

/** Everything that is set aside, as it was looked at last. */
export const setAside = signal<readonly AsidePiece[]>([]);

/** Looks what is set aside. */
export async function lookAtAside(): Promise<void> {
  const kept = await shelf.all();
  const remembered = asideCopies().map(
    ({ name, text }): AsidePiece => ({ reason: 'remembered', text, place: name }),
  );
  const unkeepable = store.aside
    .peek()
    .map((event): AsidePiece => ({ reason: 'unkeepable', text: textOf(event), place: event.id }));
  setAside.value = [...kept, ...remembered, ...unkeepable];
}

/** Saves all of it as one file, each piece with its reason. */
export function saveAside(): void {
  const pieces = setAside.peek().map(({ reason, text }) => ({ reason, text }));
  saveText('sweepline-set-aside.json', JSON.stringify(pieces, null, 2), 'application/json');
}

/** Throws all of it away for good. Whether that could be done. */
export async function throwSetAsideAway(): Promise<boolean> {
  const pieces = setAside.peek();
  const of = (...reasons: readonly AsidePiece['reason'][]) =>
    pieces.filter(({ reason }) => reasons.includes(reason));
  try {
    await shelf.throwAway(of('entry', 'page', 'sheet') as readonly SetAside[]);
    throwAsideAway(of('remembered').map(({ place }) => String(place)));
    store.letGo(of('unkeepable').map(({ place }) => eventId(String(place))));
    return true;
  } catch {
    return false;
  } finally {
    await lookAtAside();
  }
}

/** An event that no store can keep may be one that has no JSON either. */
function textOf(event: unknown): string {
  try {
    return JSON.stringify(event);
  } catch {
    return String(event);
  }
}
