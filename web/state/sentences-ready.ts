import { signal } from '@preact/signals';
import { loadSentences } from './engine.ts';

/** The sentences: null while they are fetched, `failed` when they could not be had. */
export const sentences = signal<readonly string[] | 'failed' | null>(null);

/** Fetches the sentences once; may be called again after a failure. */
export async function fetchSentences(): Promise<void> {
  if (sentences.peek() !== null && sentences.peek() !== 'failed') return;
  sentences.value = null;
  sentences.value = await loadSentences().catch(() => 'failed' as const);
}
