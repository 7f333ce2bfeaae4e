import { picklist } from 'valibot';
import { remembered } from '../device/remembered.ts';

/**
 * How she leads her warm-ups: from the desk, with the stage in a window of its own, or on the stage
 * alone. The last choice holds, so that going on brings back the same windows.
 */
export const ledBy = remembered('led-by', picklist(['stage', 'desk']), 'stage');
