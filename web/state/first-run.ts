import { boolean } from 'valibot';
import { remembered } from '../device/remembered.ts';

/** Whether a newcomer is being led to her first warm-up; it ends on the stage, or when she says so. */
export const isFirstRun = remembered('first-run', boolean(), false);

/** Leads her, from the line of what was taught. */
export function beginFirstRun(): void {
  isFirstRun.value = true;
}

/** Leaves her to herself. */
export function endFirstRun(): void {
  isFirstRun.value = false;
}
