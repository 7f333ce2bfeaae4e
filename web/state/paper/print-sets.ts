import { computed } from '@preact/signals';
import { array, object, string } from 'valibot';
import { remembered } from '../../device/remembered.ts';
import { change } from '../undo.ts';
import { type Choices, choices, choicesSchema } from './print-choices.ts';

/** Choices that she keeps under a name, such as her Friday cards. */
export interface PrintSet {
  readonly name: string;
  readonly choices: Choices;
}

const kept = remembered(
  'print-sets',
  array(object({ name: string(), choices: choicesSchema })),
  [],
);

/** Her sets on this device, in the order in which they were kept. */
export const printSets = computed<readonly PrintSet[]>(() => kept.value);

/** Keeps the choices of now under a name; those kept under it before make way. Can be undone. */
export function keepSet(name: string): void {
  const set = { name: name.trim(), choices: choices.peek() };
  const others = kept.peek().filter((each) => each.name !== set.name);
  change(kept, [...others, set], `Kept “${set.name}”.`);
}

/** Chooses what was kept. Can be undone. */
export function applySet({ name, choices: chosen }: PrintSet): void {
  change(choices, { ...chosen }, `Chose “${name}”.`);
}

/** Gives a set another name; one that had that name makes way. Can be undone. */
export function renameSet(from: string, to: string): void {
  const name = to.trim();
  if (name === from) return;
  const others = kept.peek().filter((each) => each.name !== name);
  const renamed = others.map((each) => (each.name === from ? { ...each, name } : each));
  change(kept, renamed, `“${from}” is now “${name}”.`);
}

/** Keeps a set no longer. Can be undone. */
export function removeSet(name: string): void {
  change(
    kept,
    kept.peek().filter((each) => each.name !== name),
    `Removed “${name}”.`,
  );
}
