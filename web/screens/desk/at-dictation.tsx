import type { Running } from '../../../core/warm-up/run-state.ts';

/** The word to dictate. The children see a writing line and nothing else. */
export function AtDictation({ now: { standing, dictated } }: { readonly now: Running }) {
  const word = dictated[standing.dictating ?? 0];
  return (
    <div class="desk-dictation">
      <p class="quiet">Say the word, use it in a sentence, say it again.</p>
      <p class="desk-word">{word}</p>
      <p class="quiet">The stage shows the writing line.</p>
    </div>
  );
}
