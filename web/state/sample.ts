import { signal } from '@preact/signals';
import { parseDay } from '../../core/learners/day.ts';
import type { LogEvent } from '../../core/log/event.ts';
import { today } from './day.ts';
import { readyEngine, startEngine } from './engine-ready.ts';
import { isLookedAt, lookAtClass, openLastClass } from './open-class.ts';

/** How far the sample class is made, 0 to 1; null when none is being made. */
export const sampleShare = signal<number | null>(null);

/** Whether the sample class could not be made the last time. */
export const sampleFailed = signal(false);

/**
 * Makes the sample class, school day by school day, and opens it to be looked at. She may go on clicking
 * meanwhile; `stopMaking` leaves everything as it is.
 */
export async function lookAround(): Promise<void> {
  if (sampleShare.peek() !== null || isLookedAt.peek()) return;
  sampleFailed.value = false;
  sampleShare.value = 0;
  const { SAMPLE_CLASS, SAMPLE_DAYS, sampleClass } = await import(
    '../../core/sample/sample-class.ts'
  );
  if (readyEngine() === null) await startEngine();
  const ready = readyEngine();
  const day = parseDay(today());
  if (!ready || day === null) {
    sampleFailed.value = true;
    sampleShare.value = null;
    return;
  }
  const events: LogEvent[] = [];
  let done = 0;
  for (const batch of sampleClass(ready, day)) {
    events.push(...batch);
    done++;
    sampleShare.value = done / SAMPLE_DAYS;
    await new Promise((rest) => setTimeout(rest));
    if (sampleShare.peek() === null) return;
  }
  sampleShare.value = null;
  await lookAtClass(SAMPLE_CLASS, events);
}

/** Makes no sample class after all. */
export function stopMaking(): void {
  sampleShare.value = null;
}

/** Puts the sample class away, with all that was done in it, and opens hers. */
export function leaveSample(): Promise<void> {
  return openLastClass();
}
