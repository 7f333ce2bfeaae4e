import { countWords, type MapCell } from '../../../core/facts/class-map.ts';
import { MASTERY_WORDS } from '../../../core/facts/mastery-word.ts';
import { Sign } from '../../controls/sign.tsx';

/** How many cards there are of each word, beside its sign. */
export function WordCounts({ cells }: { readonly cells: readonly MapCell[] }) {
  const counts = countWords(cells);
  return (
    <ul class="child-counts">
      {MASTERY_WORDS.map((word) => (
        <li key={word}>
          <Sign word={word} /> <b>{counts[word]}</b> {word}
        </li>
      ))}
    </ul>
  );
}
