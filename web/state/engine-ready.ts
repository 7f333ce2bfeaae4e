import { computed, signal } from '@preact/signals';
import { accent } from './accent.ts';
import { names, rules } from './class-words.ts';
import { type Engine, loadEngine } from './engine.ts';

/** The engine with its word list: null while it loads, `failed` when it could not be had. */
export const engine = signal<Engine | 'failed' | null>(null);

const forClass = computed(() => {
  const now = engine.value;
  return now === 'failed' || now === null
    ? null
    : now.forClass(accent.value, rules.value, names.value);
});

/**
 * The engine for her class, with her own decisions about words, when it is
 * ready, else null. Reading it in a component follows it.
 */
export function readyEngine(): Engine | null {
  return forClass.value;
}

/** Loads the word list; may be called again after a failure. */
export async function startEngine(): Promise<void> {
  engine.value = null;
  try {
    engine.value = await loadEngine();
  } catch {
    engine.value = 'failed';
  }
}
