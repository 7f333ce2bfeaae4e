import { useMemo, useState } from 'preact/hooks';
import { cardsAt, outcomeAt, type WordTable } from '../../../core/boards/judge/word-table.ts';
import { graphemeOf } from '../../../core/language/card-id.ts';
import { meanings } from '../../state/meanings.ts';
import { say } from './wording.ts';

/** So many nonsense words are shown as examples. */
const EXAMPLES = 9;

/** What a board of syllables says: its real words, divided; nonsense for example. */
export function BeatWords({ table }: { readonly table: WordTable }) {
  const [all, setAll] = useState(false);
  const [real, nonsense] = useMemo(() => sorted(table), [table]);
  return (
    <div class="beat-words">
      <ul class="beat-real">
        {real.map(({ word, divided }) => (
          <li key={divided}>
            <span class="word real" title={meanings.value?.meaningOf(word) ?? undefined}>
              {divided}
            </span>
          </li>
        ))}
      </ul>
      {real.length === 0 && <p class="quiet">{say.beatWords.noRealWordYet}</p>}
      {nonsense.length > 0 && (
        <>
          <h3>{all ? say.beatWords.nonsense : say.beatWords.nonsenseForExample}</h3>
          <ul class="beat-nonsense">
            {(all ? nonsense : nonsense.slice(0, EXAMPLES)).map(({ divided }) => (
              <li key={divided}>{divided}</li>
            ))}
          </ul>
          {!all && nonsense.length > EXAMPLES && (
            <button type="button" class="button plain" onClick={() => setAll(true)}>
              {say.beatWords.more(nonsense.length - EXAMPLES)}
            </button>
          )}
        </>
      )}
    </div>
  );
}

interface Divided {
  readonly word: string;
  /** With a dot where it divides: `nap·kin`. */
  readonly divided: string;
}

function sorted(
  table: WordTable,
): readonly [real: readonly Divided[], nonsense: readonly Divided[]] {
  const real: Divided[] = [];
  const nonsense: Divided[] = [];
  table.words.forEach((word, row) => {
    const outcome = outcomeAt(table, row);
    const divided = cardsAt(table, row).map(graphemeOf).join('·');
    if (outcome === 'familiar' || outcome === 'rare') real.push({ word, divided });
    else if (outcome === 'nonsense') nonsense.push({ word, divided });
  });
  return [real, nonsense];
}
