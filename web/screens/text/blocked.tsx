import { useState } from 'preact/hooks';
import type { JudgedWord, Passage } from '../../../core/texts/passage.ts';
import { taught } from '../../state/progress.ts';
import { becauseSaid, type ReadingGroup } from './because.ts';
import { say } from './wording.ts';

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
          ? say.blocked.everyWordCan
          : say.blocked.notYet(
              blocked.length.toLocaleString('en-US'),
              blocked.length === 1 ? say.blocked.word : say.blocked.differentWords,
            )}
      </h2>
      <ul>
        {blocked.slice(0, limit).map((word) => (
          <BlockedWord key={word.word} word={word} standing={standing} />
        ))}
      </ul>
      {blocked.length > limit && (
        <p class="more not-printed">
          <button type="button" class="button" onClick={() => setLimit(limit + pageSize * 5)}>
            {say.blocked.showMore}
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
          {say.blocked.times(word.count)}
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
      <h3>{say.blocked.irregularWordsInIt}</h3>
      {needed.length > 0 && (
        <p>
          <span class="quiet">{say.blocked.stillNeeded}</span> {listed(needed)}
        </p>
      )}
      {taughtOnes.length > 0 && (
        <p>
          <span class="quiet">{say.blocked.knownByHeart}</span> {listed(taughtOnes)}
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
      <h3>{say.blocked.namesAndUnknownWords}</h3>
      <p>
        {listed(words)} <span class="quiet">{say.blocked.guessedByTheirLetters}</span>
      </p>
    </div>
  );
}

const mostListed = 60;

function listed(words: readonly string[]): string {
  const more = words.length - mostListed;
  const text = words.slice(0, mostListed).join(', ');
  return more > 0 ? say.blocked.andMore(text, more) : text;
}
