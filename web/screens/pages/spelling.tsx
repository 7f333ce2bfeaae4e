import type { ChildId } from '../../../core/ids.ts';
import { lettersShown } from '../../../core/language/card-id.ts';
import type { CommonSlip } from '../../../core/papers/spelling-shown.ts';
import { habitName } from '../../../core/spelling/plain-words.ts';
import { type ChildSpelling, spellingOf } from '../../state/papers.ts';

import type { FamilyWords } from '../../wording/family/family-words.ts';
import { say } from './wording.ts';

/** So many slips and words stand on a page. */
const MOST = 6;

/** What a child's papers have shown: hearing and spelling apart, and its latest attempts; nothing without papers. */
export function Spelling({ child }: { readonly child: ChildId }) {
  const spelling = spellingOf(child);
  if (!spelling) return null;
  const { hears, knows, missed } = spelling;
  return (
    <section>
      <h3>{say.spelling.spellingPapers}</h3>
      <p>{say.spelling.ofTheSounds(hears.times, hears.of, knows.times, knows.of)}</p>
      {missed.length > 0 && (
        <p>
          {say.spelling.writtenLast(
            missed
              .slice(0, MOST)
              .map(({ word, wrote }) => say.spelling.for(wrote, word))
              .join(', '),
          )}
        </p>
      )}
      <Needs spelling={spelling} />
    </section>
  );
}

function Needs({ spelling: { slips } }: { readonly spelling: ChildSpelling }) {
  const of = (need: CommonSlip['need']) => namesOf(slips.filter((slip) => slip.need === need));
  const [ear, spelling] = [of('ear'), of('spelling')];
  return (
    <>
      {ear !== '' && <p>{say.spelling.notHeardSay(ear)}</p>}
      {spelling !== '' && <p>{say.spelling.heardSpelledOtherwise(spelling)}</p>}
    </>
  );
}

/** What a child missed in spelling, in a few words; empty without papers. */
export function missedSaid(child: ChildId): string {
  return namesOf(spellingOf(child)?.slips ?? []);
}

/** The words that a child wrote otherwise, to be written at home; nothing where there are none. */
export function WordsToWrite({
  child,
  name,
  words,
}: {
  readonly child: ChildId;
  readonly name: string;
  readonly words: FamilyWords;
}) {
  const missed = spellingOf(child)?.missed.slice(0, MOST) ?? [];
  if (missed.length === 0) return null;
  return (
    <>
      <h3>{words.toWrite}</h3>
      <ul class="home-words" lang="en-US">
        {missed.map(({ word }) => (
          <li key={word}>{word}</li>
        ))}
      </ul>
      <p>{words.howToWrite(name)}</p>
    </>
  );
}

function namesOf(slips: readonly CommonSlip[]): string {
  const names = slips.map(({ about }) =>
    'habit' in about ? habitName(about.habit) : lettersShown(about.card),
  );
  return [...new Set(names)].slice(0, MOST).join(', ');
}
