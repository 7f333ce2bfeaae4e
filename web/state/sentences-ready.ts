import { computed, signal } from '@preact/signals';
import { textHere } from '../../core/language/accent/text-here.ts';
import { accent } from './accent.ts';
import { loadSentences } from './engine.ts';

const fetched = signal<readonly string[] | 'failed' | null>(null);

/** The sentences as the class spells them: null while they are fetched, `failed` when they could not be had. */
export const sentences = computed(() => {
  const all = fetched.value;
  if (all === null || all === 'failed') return all;
  return all.map((text) => textHere(text, accent.value));
});

/** Fetches the sentences once; may be called again after a failure. */
export async function fetchSentences(): Promise<void> {
  if (fetched.peek() !== null && fetched.peek() !== 'failed') return;
  fetched.value = null;
  fetched.value = await loadSentences().catch(() => 'failed' as const);
}
