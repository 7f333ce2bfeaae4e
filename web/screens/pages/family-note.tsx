import { useEffect, useMemo, useState } from 'preact/hooks';
import { homePractice, type Practiced } from '../../../core/dictation/home-practice.ts';
import type { CardId } from '../../../core/language/card-id.ts';
import type { Child } from '../../../core/log/class-state.ts';
import { Card } from '../../controls/card.tsx';
import { today } from '../../state/day.ts';
import { readyEngine } from '../../state/engine-ready.ts';
import { knowledge, modelDay } from '../../state/knowledge.ts';
import { sentenceOn } from '../../state/of-child.ts';
import { practicedBy } from '../../state/practiced.ts';
import { linkTo } from '../../state/route.ts';
import { fetchSentences, sentences } from '../../state/sentences-ready.ts';
import { thresholds } from '../../state/thresholds.ts';
import { cardName } from '../../wording/card-name.ts';
import { dayName } from '../../wording/day-name.ts';
import { HerLine } from './her-line.tsx';
import { WordsToWrite } from './spelling.tsx';

/** How much home practice stands on the page (common practice, no source). */
const WORDS = 15;
const SENTENCES = 2;

/** A note for a family: what their child reads surely, and words and sentences that this child can read. */
export function FamilyNote({ child }: { readonly child: Child }) {
  const [turn, setTurn] = useState(0);
  useEffect(() => void fetchSentences(), []);
  const { practice, wanted, isSeen } = usePractice(child, turn);
  return (
    <article class="paper-page family">
      <header>
        <h2>Reading at home with {child.name}</h2>
        <p class="quiet">{dayName(today(), today())}</p>
      </header>
      <p class="page-lead">
        <b>
          {child.name}: {sentenceOn(child)}
        </b>
      </p>
      <p>
        In school we practice reading by sounds for a few minutes every day. Five minutes at home
        help a great deal.
      </p>
      {practice === null && <p class="quiet">Choosing words …</p>}
      {practice && practice.words.length === 0 && (
        <p class="not-printed pages-hint">
          The sounds that {child.name} is sure of, by what was noted, do not make words yet. Take a
          short check of letter sounds, or call on {child.name} in warm-ups; then words stand here.
        </p>
      )}
      {practice && practice.words.length > 0 && (
        <>
          <h3>{isSeen ? `Words that ${child.name} can read` : 'Words to try'}</h3>
          <ul class="home-words" aria-label="Words to read">
            {practice.words.map(({ text }) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
          {practice.sentences.length > 0 && (
            <>
              <h3>To read together</h3>
              {practice.sentences.map(({ text }) => (
                <p key={text} class="home-sentence">
                  {text}
                </p>
              ))}
            </>
          )}
          <p class="not-printed">
            <button type="button" class="button" onClick={() => setTurn(turn + 1)}>
              Other words
            </button>{' '}
            <a class="button" href={linkTo('print', `home=${encodeURIComponent(child.id)}`)}>
              As a sheet with cards
            </a>
          </p>
        </>
      )}
      {wanted.length > 0 && (
        <>
          <h3>We are practicing these just now</h3>
          <ul class="page-cards">
            {wanted.map((card) => (
              <li key={card}>
                <span class="for-ears">{cardName(card)}</span>
                <Card id={card} />
              </li>
            ))}
          </ul>
        </>
      )}
      <WordsToWrite child={child.id} name={child.name} />
      <h3>How to practice</h3>
      <ol class="home-how">
        <li>
          {child.name} points to each letter or pair of letters, says its sound, then runs a finger
          under the word and says it.
        </li>
        <li>
          If a word goes wrong, say it yourself, then say it together, then let {child.name} say it
          alone.
        </li>
        <li>Stop while it is still fun, and say what went well.</li>
      </ol>
      <HerLine page="family" about={child.id} placeholder="A friendly line to the family" />
    </article>
  );
}

type Home = ReturnType<typeof homePractice>;

/** So many of what is being practiced are named. */
const MOST_WANTED = 8;

/**
 * What the child can practice at home; null while that is fetched. Without the sentences, words alone.
 * Where what the child has been seen to read makes too few words, they are of what was taught and is
 * expected, and `isSeen` is false.
 */
function usePractice(
  child: Child,
  turn: number,
): {
  readonly practice: Home | null;
  readonly wanted: readonly CardId[];
  readonly isSeen: boolean;
} {
  const ready = readyEngine();
  const all = sentences.value;
  const { read } = knowledge.value;
  const { secure } = thresholds.value;
  return useMemo(() => {
    const seen = practicedBy(child, 'seen');
    const wanted = seen.cards.slice(0, MOST_WANTED);
    if (!ready || !all) return { practice: null, wanted, isSeen: true };
    const { lexicon, screen } = ready;
    const practiceOf = (practiced: Practiced) =>
      homePractice(
        practiced,
        { seed: modelDay() + turn, words: WORDS, sentences: SENTENCES },
        { lexicon, screen, sentences: all === 'failed' ? [] : all },
      );
    const practice = practiceOf(seen);
    if (practice.words.length === WORDS) return { practice, wanted, isSeen: true };
    return { practice: practiceOf(practicedBy(child)), wanted, isSeen: false };
  }, [child, ready, all, read, secure, turn]);
}
