import { signal } from '@preact/signals';
import { type Engine, loadEngine, loadMeanings, type Meanings } from '../engine.ts';

/** The engine with its word list: null while it loads, `failed` when it could not be had. */
export const engine = signal<Engine | 'failed' | null>(null);

/** The short meanings; null until they are here, and for good if they cannot be had. */
export const meanings = signal<Meanings | null>(null);

/** The engine when it is ready, else null. Reading it in a component follows it. */
export function readyEngine(): Engine | null {
  const now = engine.value;
  return now === 'failed' ? null : now;
}

/** Loads the word list, then the meanings; may be called again after a failure. */
export async function startEngine(): Promise<void> {
  engine.value = null;
  try {
    engine.value = await loadEngine();
  } catch {
    engine.value = 'failed';
    return;
  }
  meanings.value = await loadMeanings().catch(() => null);
}
