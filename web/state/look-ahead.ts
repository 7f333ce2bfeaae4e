import { array, number, object, string } from 'valibot';
import { remembered } from '../device/remembered.ts';

/**
 * The day that she looks ahead to, `YYYY-MM-DD`; empty for the next June 12. `free` are breaks that an
 * earlier version kept here; classes take them over (kept-before.ts), and they stay.
 */
export const lookAheadTo = remembered(
  'school-days',
  object({ free: array(object({ from: number(), to: number() })), until: string() }),
  { free: [], until: '' },
);
