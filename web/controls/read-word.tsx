import './read-word.css';
import type { CardId } from '../../core/language/card-id.ts';
import { lettersInWord } from '../../core/language/letters-in-word.ts';

/** A word as it was read, from its cards; the letters of the card at `missed`, counted from 0, are marked. */
export function ReadWord({
  cards,
  missed,
}: {
  readonly cards: readonly CardId[];
  readonly missed: number | null;
}) {
  return (
    <span class="read-word">
      {lettersInWord(cards).map(({ letters, at }, place) =>
        at === missed ? <b key={place}>{letters}</b> : letters,
      )}
    </span>
  );
}
