import { array, string } from 'valibot';
import { remembered } from '../device/remembered.ts';

const met = remembered('met', array(string()), []);

/** Whether she has been told of this, and has put the line away for good. */
export function hasMet(thing: string): boolean {
  return met.value.includes(thing);
}

/** Puts the line about this away for good. */
export function meet(thing: string): void {
  if (!hasMet(thing)) met.value = [...met.peek(), thing];
}
