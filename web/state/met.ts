import { array, string } from 'valibot';
import { remembered } from '../device/remembered.ts';
import type { Thing } from '../wording/first-time.ts';

const met = remembered('met', array(string()), []);

/** Whether she has been told of this, and has put the line away for good. */
export function hasMet(thing: Thing): boolean {
  return met.value.includes(thing);
}

/** Puts the line about this away for good. */
export function meet(thing: Thing): void {
  if (!hasMet(thing)) met.value = [...met.peek(), thing];
}
