import { useState } from 'preact/hooks';
import type { PapersRecord } from '../../../core/log/papers-record.ts';
import { parseWords } from '../../../core/papers/said-words.ts';
import { FirstTime } from '../../controls/first-time.tsx';
import { today } from '../../state/day.ts';
import { dictation } from '../../state/dictation-made.ts';
import { readyEngine } from '../../state/engine-ready.ts';
import { groupName } from '../../state/open-class.ts';
import { beginPile, childrenOfPile, openPapers, piles } from '../../state/papers.ts';
import { asked } from '../../state/route.ts';
import { dayName } from '../../wording/day-name.ts';
import { say } from './wording.ts';

/** Which words were dictated, and when; and the piles that were begun before. */
export function Setup() {
  const dictated = dictation.value?.words.map(({ text }) => text).join(' ') ?? '';
  const [text, setText] = useState(() => ((askedDay() ?? today()) === today() ? dictated : ''));
  const [day, setDay] = useState(() => askedDay() ?? today());
  const ready = readyEngine();
  const { words, problems } = ready ? parseWords(text, ready.lexicon) : NOTHING;
  return (
    <div class="papers-setup">
      <h1>{say.setup.spellingPapers}</h1>
      <p class="quiet">{say.setup.typeWhatYourChildren}</p>
      <FirstTime of="two answers" />
      <div class="papers-columns">
        <form
          class="part"
          aria-label={say.setup.aNewPile}
          onSubmit={(event) => {
            event.preventDefault();
            if (words.length > 0) beginPile(words, day === '' ? null : day);
          }}
        >
          <h2>{say.setup.aNewPileOf(groupName.value)}</h2>
          <label class="papers-field">
            <span>{say.setup.theWordsYouSaid}</span>
            <textarea
              rows={4}
              value={text}
              spellcheck={false}
              onInput={(event) => setText(event.currentTarget.value)}
            />
          </label>
          {dictated !== '' && text !== dictated && (
            <button type="button" class="button plain" onClick={() => setText(dictated)}>
              {say.setup.takeTheWords}
            </button>
          )}
          <label class="papers-field">
            <span>{say.setup.writtenOnLeave}</span>
            <input
              type="date"
              value={day}
              max={today()}
              onInput={(event) => setDay(event.currentTarget.value)}
            />
          </label>
          {problems.map(({ word, message }) => (
            <p key={word} class="papers-problem" role="alert">
              {message}
            </p>
          ))}
          <p class="buttons">
            <button type="submit" class="button next" disabled={words.length === 0}>
              {say.setup.begin(words.length > 0 ? say.setup.words(words.length) : '')}
            </button>
          </p>
        </form>
        <section class="part" aria-labelledby="papers-piles">
          <h2 id="papers-piles">{say.setup.piles}</h2>
          {piles.value.length === 0 ? (
            <p class="quiet">{say.setup.noneYetAPile}</p>
          ) : (
            <ul class="papers-piles">
              {piles.value.map((pile) => (
                <li key={pile.id}>
                  <button type="button" class="papers-pile" onClick={() => openPapers(pile.id)}>
                    <strong>{pile.words.map(({ word }) => word).join(', ')}</strong>
                    <span class="quiet small">{pileSaid(pile)}</span>
                  </button>
                </li>
              ))}
            </ul>
          )}
        </section>
      </div>
    </div>
  );
}

/** The day of the warm-up from which she came; null when she came from elsewhere. */
function askedDay(): string | null {
  return new URLSearchParams(asked.peek()).get('day');
}

const NOTHING = { words: [], problems: [] };

/** When a pile was written, and how much of it was read. */
function pileSaid(pile: PapersRecord): string {
  const of = childrenOfPile(pile).length * pile.words.length;
  const read = say.setup.ofWordsRead(pile.answers.size, of);
  return pile.day === null ? read : `${dayName(pile.day, today())}; ${read}`;
}
