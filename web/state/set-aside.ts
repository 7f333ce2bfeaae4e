/** What could not be read or kept on this device and was set aside: to be seen, saved and thrown away. */

import { signal } from '@preact/signals';
import { createAsideShelf, jsonOf, type SetAside } from '../device/log/set-aside.ts';
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
  const asText = new Set(kept.map(({ text }) => text));
  const unkeepable = store.aside
    .peek()
    .map((event) => ({ id: event.id, text: jsonOf(event) ?? String(event) }))
    .filter(({ text }) => !asText.has(text))
    .map(({ id, text }): AsidePiece => ({ reason: 'unkeepable', text, place: id }));
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
    await shelf.throwAway(of('entry', 'page', 'sheet', 'as-text') as readonly SetAside[]);
    throwAsideAway(of('remembered').map(({ place }) => String(place)));
    store.letGo(store.aside.peek().map(({ id }) => id));
    return true;
  } catch {
    return false;
  } finally {
    await lookAtAside();
  }
}
