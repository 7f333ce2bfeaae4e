import { signal } from '@preact/signals';
import { askToPersist } from '../../device/log/persistence.ts';

/** What the browser said when it was asked to keep everything for good. */
export const keptForGood = signal<Awaited<ReturnType<typeof askToPersist>> | 'not-asked'>(
  'not-asked',
);

/** Asks the browser; some ask the person in turn, so this belongs to something she did. */
export async function askToKeep(): Promise<void> {
  keptForGood.value = await askToPersist();
}

/** Looks whether the browser has promised it already, without asking anyone. */
export async function lookWhetherKept(): Promise<void> {
  try {
    if (await navigator.storage?.persisted?.()) keptForGood.value = 'granted';
  } catch {
    // It cannot say; asking will tell.
  }
}
