import { type Signal, signal } from '@preact/signals';

/** One change that can be taken back: what it did, in her words, and how. */
export interface Undoable {
  readonly said: string;
  readonly undo: () => void;
}

let done: readonly Undoable[] = [];
const deepest = 100;

/** The change just made, until it is taken back or its telling has had its time. */
export const latest = signal<Undoable | null>(null);

/** Sets a remembered value and notes how to go back. A change to the same value does nothing. */
export function change<Value>(value: Signal<Value>, next: Value, said: string): void {
  const before = value.peek();
  if (before === next) return;
  value.value = next;
  noteUndo(said, () => {
    value.value = before;
  });
}

/** Notes how to go back from a change that was just made; `isTold` where it is not seen by itself. */
export function noteUndo(said: string, undo: () => void, isTold = true): void {
  const undoable: Undoable = { said, undo };
  done = [...done.slice(1 - deepest), undoable];
  latest.value = isTold ? undoable : null;
}

/** Makes several changes one: all that `make` notes is taken back together, the latest first. */
export function changeAsOne(said: string, make: () => void): void {
  const before = done;
  done = [];
  make();
  const made = done;
  done = before;
  if (made.length === 0) return;
  noteUndo(said, () => {
    for (const { undo } of made.toReversed()) undo();
  });
}

/** Takes back the last change; returns what it was, or null when there is none. */
export function undoLast(): string | null {
  const last = done.at(-1);
  if (!last) return null;
  done = done.slice(0, -1);
  latest.value = null;
  last.undo();
  return last.said;
}
