/** What she typed or pasted and has not added yet: it stays when she looks at another screen. */
import { signal } from '@preact/signals';

/** A class list. It may hold more than first names, so it is in this window's memory alone. */
export const listPasted = signal('');
