import type { Passage } from '../../../core/texts/passage.ts';
import { readAsSaid } from '../../wording/read-as.ts';
import { say } from './wording.ts';

/** Words shown; a whole book would hold hundreds. */
const MOST_SHOWN = 60;

/** The words that count as readable although their cards alone do not say why. */
export function ReadOtherwise({ passage }: { readonly passage: Passage }) {
  const words = [...passage.judged.values()].filter(
    ({ read }) => read !== null && /^(flexed|form|compound)$/.test(read.kind),
  );
  if (words.length === 0) return null;
  return (
    <details class="read-otherwise">
      <summary>
        {words.length === 1
          ? say.readOtherwise.oneWordIsRead
          : say.readOtherwise.wordsAreRead(words.length)}
      </summary>
      <ul>
        {words.slice(0, MOST_SHOWN).map(({ word, read }) => (
          <li key={word}>
            <b>{word}</b> {read && readAsSaid(read)}
          </li>
        ))}
      </ul>
    </details>
  );
}
