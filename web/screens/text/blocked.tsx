import { useState } from 'preact/hooks';
import type { JudgedWord, Passage } from '../../../core/texts/passage.ts';
import { taught } from '../../state/progress.ts';
import { becauseSaid, type ReadingGroup } from './because.ts';

const pageSize = 40;

/** The words that cannot be read yet, the commonest in the text first, each with its reason. */
export function Blocked({
  passage,
  standing,
}: {
  readonly passage: Passage;
  readonly standing: ReadingGroup;
}) {
  const [limit, setLimit] = useState(pageSize);
  const { blocked } = passage;
  return (
    <section class="blocked-list" aria-labelledby="blocked-title">
      <h2 id="blocked-title">
        {blocked.length === 0
          ? 'Every word can be read'
          : `${blocked.length.toLocaleString('en-US')} ${blocked.length === 1 ? 'word' : 'different words'} not yet`}
      </h2>
      <ul>
        {blocked.slice(0, limit).map((word) => (
          <BlockedWord key={word.word} word={word} standing={standing} />
        ))}
      </ul>
      {blocked.length > limit && (
        <p class="more not-printed">
          <button type="button" class="button" onClick={() => setLimit(limit + pageSize * 5)}>
            Show more
          </button>
        </p>
      )}
      <Irregular passage={passage} />
      <Unknown passage={passage} />
    </section>
  );
}

function BlockedWord({
  word,
  standing,
}: {
  readonly word: JudgedWord;
  readonly standing: ReadingGroup;
}) {
  return (
    <li>
      <b>{word.word}</b>
      {word.count > 1 && (
        <span class="small quiet">
          <span class="for-ears">, </span>
          {word.count} times
        </span>
      )}
      <span class="why">{becauseSaid(word, standing)}</span>
    </li>
  );
}

/** The irregular words of the text: those still to be taught, then those known by heart. */
function Irregular({ passage }: { readonly passage: Passage }) {
  const known = taught.value.irregularWords;
  const isKnown = (word: string) => known.has(word);
  const needed = passage.irregular.filter((word) => !isKnown(word));
  const taughtOnes = passage.irregular.filter(isKnown);
  if (passage.irregular.length === 0) return null;
  return (
    <div class="irregular-words">
      <h3>Irregular words in it</h3>
      {needed.length > 0 && (
        <p>
          <span class="quiet">still needed:</span> {listed(needed)}
        </p>
      )}
      {taughtOnes.length > 0 && (
        <p>
          <span class="quiet">known by heart:</span> {listed(taughtOnes)}
        </p>
      )}
    </div>
  );
}

/** The words that the list does not have; they were guessed at, readable or not. */
function Unknown({ passage }: { readonly passage: Passage }) {
  const words = passage.unknown.map(({ word }) => word);
  if (words.length === 0) return null;
  return (
    <div class="irregular-words">
      <h3>Names and unknown words</h3>
      <p>
        {listed(words)} <span class="quiet">(guessed by their letters)</span>
      </p>
    </div>
  );
}

const mostListed = 60;

function listed(words: readonly string[]): string {
  const more = words.length - mostListed;
  const text = words.slice(0, mostListed).join(', ');
  return more > 0 ? `${text} and ${more} more` : text;
}
