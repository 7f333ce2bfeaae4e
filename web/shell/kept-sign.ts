import { effect } from '@preact/signals';
import { isBehind } from '../device/after-paint.ts';
import { store } from '../state/open-class.ts';

/**
 * Signs on the page's root whether all that was recorded is kept for good:
 * `data-unsaved` is there from the moment something happens until it is on this
 * device. While something cannot be kept, the browser asks before it closes the window.
 */
export function signUnsaved(root: HTMLElement): void {
  effect(() => {
    root.toggleAttribute('data-unsaved', isBehind.value || store.unsaved.value.length > 0);
  });
  addEventListener('beforeunload', (event) => {
    const isHeld = store.trouble.peek() !== null && store.unsaved.peek().length > 0;
    if (isHeld || store.inMemory.peek()) event.preventDefault();
  });
}
