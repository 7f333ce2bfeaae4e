import { soundStyle } from '../../state/accent.ts';
import './class-words.css';
import { useState } from 'preact/hooks';
import { PHONEMES, soundLabel } from '../../../core/language/phonemes.ts';
import type { Screened } from '../../../core/words/screen.ts';
import { decisionsInForce, type TeacherDecision } from '../../../core/words/teacher-rules.ts';
import { rules, settleSounds, settleWord, unsettle } from '../../state/class-words.ts';
import type { Engine } from '../../state/engine.ts';
import { readyEngine } from '../../state/engine-ready.ts';
import { linkTo } from '../../state/route.ts';
import { say } from './wording.ts';

/** The words she has decided about for her class, and a place to decide about any other. */
export function ClassWords() {
  const decided = decisionsInForce(rules.value);
  return (
    <fieldset class="class-words">
      <legend>
        <h2>{say.classWords.wordsInYourClass}</h2>
      </legend>
      <p class="quiet">
        {say.classWords.wordsNotFit(<a href={linkTo('class')}>{say.classWords.class}</a>)}
      </p>
      <DecideForm />
      {decided.length > 0 && (
        <ul class="decisions" aria-label={say.classWords.whatYouDecided}>
          {decided.map((decision) => (
            <li key={`${decision.about} ${decision.text}`}>
              <span>
                <b>{nameOf(decision)}</b>{' '}
                <span class="quiet">
                  {decision.choice === 'block'
                    ? say.classWords.staysHidden
                    : say.classWords.mayBeShown}
                </span>
              </span>
              <button
                type="button"
                class="button plain"
                aria-label={say.classWords.takeBack(nameOf(decision))}
                onClick={() => unsettle(decision)}
              >
                {say.classWords.takeBackAlone}
              </button>
            </li>
          ))}
        </ul>
      )}
    </fieldset>
  );
}

function DecideForm() {
  const [text, setText] = useState('');
  const [alsoSounds, setAlsoSounds] = useState(false);
  const word = text.trim().toLowerCase();
  const ready = readyEngine();
  const isWord = /^[a-z]+$/.test(word);
  const settle = (choice: TeacherDecision['choice']) => {
    if (!isWord) return;
    const ways = alsoSounds ? (ready?.waysToSay(word) ?? []) : [];
    if (ways.length === 0) settleWord(choice, word);
    else settleSounds(choice, word, ways);
    setText('');
  };
  return (
    <form
      class="decide"
      onSubmit={(event) => {
        event.preventDefault();
        settle('block');
      }}
    >
      <label>
        {say.classWords.aWord}
        <input
          type="text"
          value={text}
          maxLength={30}
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          onInput={(event) => setText(event.currentTarget.value)}
        />
      </label>
      <label class="option">
        <input
          type="checkbox"
          checked={alsoSounds}
          onChange={(event) => setAlsoSounds(event.currentTarget.checked)}
        />
        <span>{say.classWords.andWhateverElseSounds}</span>
      </label>
      <p class="quiet small" role="status">
        {word !== '' && (isWord ? now(word, ready) : say.classWords.oneWordInLetters)}
      </p>
      <p class="buttons">
        <button type="submit" class="button" disabled={!isWord}>
          {say.classWords.keepItHidden}
        </button>
        <button type="button" class="button" disabled={!isWord} onClick={() => settle('allow')}>
          {say.classWords.allowIt}
        </button>
      </p>
    </form>
  );
}

/** What holds for a word at the moment. */
function now(word: string, ready: Engine | null): string {
  const ways = ready?.waysToSay(word) ?? [];
  const hidden = ways
    .map((sounds) => (ready as Engine).screen.judge(word, sounds))
    .find(({ verdict }) => verdict !== 'clear');
  return hidden ? say.classWords.hiddenNow(reasonFor(hidden)) : say.classWords.itMayBeShown;
}

function reasonFor({ category, reason }: Screened): string {
  return category === 'teacher' || category === 'name'
    ? `${reason}`
    : say.classWords.it(reason ?? '');
}

const known: ReadonlySet<string> = new Set(PHONEMES);

function nameOf({ about, text }: TeacherDecision): string {
  if (about === 'word') return text;
  const sounds = text.split(' ').filter((sound) => known.has(sound)) as (typeof PHONEMES)[number][];
  return say.classWords.whateverSays(soundLabel(sounds, soundStyle.value));
}
