import { computed, signal } from '@preact/signals';
import type { Meanings } from '../../core/words/meanings.ts';
import { names, rules } from './class-words.ts';
import { type Engine, loadEngine, loadMeanings } from './engine.ts';

/** The engine with its word list: null while it loads, `failed` when it could not be had. */
export const engine = signal<Engine | 'failed' | null>(null);

/** The short meanings; null until they are here, and for good if they cannot be had. */
export const meanings = signal<Meanings | null>(null);

const forClass = computed(() => {
  const now = engine.value;
  return now === 'failed' || now === null ? null : now.forClass(rules.value, names.value);
});

/**
 * The engine for her class, with her own decisions about words, when it is
 * ready, else null. Reading it in a component follows it.
 */
export function readyEngine(): Engine | null {
  return forClass.value;
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
