import { signal } from '@preact/signals';
import type { Meanings } from '../../core/words/meanings.ts';
import { loadMeanings } from './engine.ts';

/** The short meanings, fetched when a screen first shows some; null until they are here, or if they cannot be had. */
export const meanings = signal<Meanings | null>(null, {
  watched() {
    if (this.peek() !== null) return;
    void loadMeanings().then(
      (here) => {
        this.value = here;
      },
      () => {},
    );
  },
});
