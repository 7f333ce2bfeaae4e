import { signal } from '@preact/signals';

/** A page that draws no frames just now does it after so long, in milliseconds. */
const LATEST = 200;

/** Whether something still waits to be done. */
export const isBehind = signal(false);

/**
 * Does something once the next frame has been painted, so that what is seen never
 * waits for what is noted; in order. A page that is hidden or closed does it at once.
 */
export function afterPaint(work: () => void): void {
  waiting.push(work);
  if (isBehind.peek()) return;
  isBehind.value = true;
  if (document.hidden) setTimeout(catchUp);
  else {
    requestAnimationFrame(() => {
      const channel = new MessageChannel();
      channel.port1.onmessage = catchUp;
      channel.port2.postMessage(null);
    });
    setTimeout(catchUp, LATEST);
  }
}

/** Does now what still waits. */
export function catchUp(): void {
  for (const work of waiting.splice(0)) work();
  isBehind.value = false;
}

const waiting: (() => void)[] = [];

for (const event of ['pagehide', 'visibilitychange']) {
  globalThis.addEventListener?.(event, catchUp, { capture: true });
}
