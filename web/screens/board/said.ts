import { computed, signal } from '@preact/signals';
import type { Tally } from '../../../core/boards/judge/card-gain.ts';
import type { Board } from '../../../core/boards/shapes/board.ts';
import { boardOnTable } from '../../state/boards.ts';
import { say } from './wording.ts';

const last = signal<{ readonly text: string; readonly board: Board | null }>({
  text: '',
  board: null,
});

/** What was said last of the board as it lies, for eyes and ears; nothing once it has changed. */
export const said = computed(() =>
  last.value.board === boardOnTable.value ? last.value.text : '',
);

/** Says something of the board as it lies now; the same words said again are heard again. */
export function tell(text: string): void {
  const again = text !== '' && said.peek() === text;
  last.value = { text: again ? `${text}\u00a0` : text, board: boardOnTable.peek() };
}

/** A tally in a sentence: `140 real words, 120 nonsense, 3 to regret`. */
export function tallyInWords({ real, nonsense, stopped }: Tally): string {
  const parts = [say.said.realWords(real), say.said.nonsense(nonsense)];
  if (stopped > 0) parts.push(say.said.toRegret(stopped));
  return parts.join(', ');
}
