/** What she typed or pasted and has not added yet: it stays when she looks at another screen. */
import { signal } from '@preact/signals';
import { string } from 'valibot';
import { remembered } from '../../device/remembered.ts';

/** Names for children; remembered on this device until they are added. */
export const namesTyped = remembered('names-typed', string(), '');

/** A class list. It may hold more than first names, so it is in this window's memory alone. */
export const listPasted = signal('');
