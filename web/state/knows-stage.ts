import { boolean } from 'valibot';
import { remembered } from '../device/remembered.ts';

/** Whether she has gone on once on the stage: until then a line there says how. */
export const knowsStage = remembered('knows-stage', boolean(), false);
