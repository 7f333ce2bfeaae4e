import { useEffect, useMemo, useState } from 'preact/hooks';
import { homePractice, type Practiced } from '../../../core/dictation/home-practice.ts';
import type { CardId } from '../../../core/language/card-id.ts';
import type { Child } from '../../../core/log/class-state.ts';
import { Card } from '../../controls/card.tsx';
import { today } from '../../state/day.ts';
import { readyEngine } from '../../state/engine-ready.ts';
import { knowledge, modelDay } from '../../state/knowledge.ts';
import { sentenceOn, storyOf } from '../../state/of-child.ts';
import { practicedBy } from '../../state/practiced.ts';
import { linkTo } from '../../state/route.ts';
import { fetchSentences, sentences } from '../../state/sentences-ready.ts';
import { thresholds } from '../../state/thresholds.ts';
import { cardName } from '../../wording/card-name.ts';
import { dayName } from '../../wording/day-name.ts';
import { ENGLISH } from '../../wording/family/english.ts';
import { SPANISH, SPANISH_STORY } from '../../wording/family/spanish.ts';
import { storyIn } from '../../wording/family/story-in.ts';
import { language } from './choice.ts';
import { HerLine } from './her-line.tsx';
import { WordsToWrite } from './spelling.tsx';
import { say } from './wording.ts';

/** How much home practice stands on the page (common practice, no source). */
const WORDS = 15;
const SENTENCES = 2;

/** A note for a family: what their child reads surely, and words and sentences that this child can read. */
export function FamilyNote({ child }: { readonly child: Child }) {
  const [turn, setTurn] = useState(0);
  useEffect(() => void fetchSentences(), []);
  const { practice, wanted, isSeen } = usePractice(child, turn);
  const isSpanish = language.value === 'spanish';
  const words = isSpanish ? SPANISH : ENGLISH;
  const sentence = isSpanish ? storyIn(SPANISH_STORY, storyOf(child)) : sentenceOn(child);
  const aboutWords = words.aboutWords(child.name);
  return (
    <article class="paper-page family" lang={words.tag}>
      <header>
        <h2>{words.title(child.name)}</h2>
        <p class="quiet">{dayName(today(), today(), words.tag)}</p>
      </header>
      <p class="page-lead">
        <b>
          {child.name}: {sentence}
        </b>
      </p>
      <p>{words.intro}</p>
      {aboutWords !== '' && <p>{aboutWords}</p>}
      {practice === null && (
        <p class="quiet" lang="en-US">
          {say.familyNote.choosingWords}
        </p>
      )}
      {practice && practice.words.length === 0 && (
        <p class="not-printed pages-hint" lang="en-US">
          {say.familyNote.theSounds(child.name)}
        </p>
      )}
      {practice && practice.words.length > 0 && (
        <>
          <h3>{isSeen ? words.canRead(child.name) : words.toTry}</h3>
          <ul class="home-words" lang="en-US" aria-label={say.familyNote.wordsToRead}>
            {practice.words.map(({ text }) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
          {practice.sentences.length > 0 && (
            <>
              <h3>{words.together}</h3>
              {practice.sentences.map(({ text }) => (
                <p key={text} class="home-sentence" lang="en-US">
                  {text}
                </p>
              ))}
            </>
          )}
          <p class="not-printed" lang="en-US">
            <button type="button" class="button" onClick={() => setTurn(turn + 1)}>
              {say.familyNote.otherWords}
            </button>{' '}
            <a class="button" href={linkTo('print', `home=${encodeURIComponent(child.id)}`)}>
              {say.familyNote.asASheet}
            </a>
          </p>
        </>
      )}
      {wanted.length > 0 && (
        <>
          <h3>{words.practicing}</h3>
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
      <WordsToWrite child={child.id} name={child.name} words={words} />
      <h3>{words.howTo}</h3>
      <ol class="home-how">
        {words.steps(child.name).map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      {words.machineMade !== '' && <p class="quiet small">{words.machineMade}</p>}
      <HerLine page="family" about={child.id} placeholder={say.familyNote.aFriendlyLine} />
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
