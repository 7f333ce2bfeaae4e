import { array, number, object } from 'valibot';
import { remembered } from '../memory/remembered.ts';

const schema = object({ seed: number(), at: number(), skipped: array(number()) });

/** Where the stage stood last, so that a closed window or a reload goes on from there. */
export const lastPlace = remembered('stage', schema, { seed: -1, at: 0, skipped: [] });
