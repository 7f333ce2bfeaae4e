import { say } from './wording.ts';
/** The answer on demand: a thumb for a real word, a quiet wave for a nonsense word. */
export function Answer({ real }: { readonly real: boolean }) {
  return real ? (
    <svg class="answer real" viewBox="0 0 64 64" role="img" aria-label={say.answer.aRealWord}>
      <path
        fill="currentColor"
        d="M8 29c0-2 1.600-3.500 3.500-3.500h7c1.900 0 3.500 1.600 3.500 3.500v24c0 2-1.600 3.500-3.500 3.500h-7C9.600 56.500 8 55 8 53Zm18 1.500c0-1.300.5-2.500 1.300-3.500l8-9.600c.6-.7.900-1.600.9-2.500V9.500C36.200 7 38 5 40.500 5c4 0 6.500 4 6.500 9v8h6.500c4 0 7 3.700 6.200 7.600l-4.300 21.300c-.7 3.300-3.500 5.600-6.900 5.600H35c-1.700 0-3.400-.4-5-1.100l-2.200-1c-1.100-.5-1.800-1.600-1.800-2.800Z"
      />
    </svg>
  ) : (
    <svg
      class="answer nonsense"
      viewBox="0 0 96 64"
      role="img"
      aria-label={say.answer.aNonsenseWord}
    >
      <path
        fill="none"
        stroke="currentColor"
        stroke-width="7"
        stroke-linecap="round"
        d="M8 36c9-16 19-16 27 0s18 16 26 0 18-16 27 0"
      />
    </svg>
  );
}
