import type { Flip } from '../../../core/boards/shapes/board.ts';
import { meanings } from '../../state/engine-ready.ts';

/** Whether the word is real, and what it means. */
export function AtBlending({ flip: { word, kind } }: { readonly flip: Flip }) {
  if (kind === 'nonsense') return <p class="desk-said quiet">nonsense</p>;
  const meaning = meanings.value?.meaningOf(word);
  return (
    <p class="desk-said">
      <b>real word</b>
      {meaning && <span class="quiet"> · {meaning}</span>}
    </p>
  );
}
