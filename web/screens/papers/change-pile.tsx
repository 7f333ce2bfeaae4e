import { useState } from 'preact/hooks';
import type { PapersChange } from '../../../core/log/event.ts';
import type { PapersRecord } from '../../../core/log/papers-record.ts';
import { parseWords } from '../../../core/papers/said-words.ts';
import type { Lexicon } from '../../../core/words/lexicon.ts';
import { today } from '../../state/day.ts';
import { readyEngine } from '../../state/engine-ready.ts';
import { changePile } from '../../state/papers.ts';
import { say } from './wording.ts';

/** The words of a pile and its day, to be set right or added to; what was read stays with its word. */
export function ChangePile({ pile }: { readonly pile: PapersRecord }) {
  const [day, setDay] = useState(pile.day ?? '');
  const [texts, setTexts] = useState<ReadonlyMap<number, string>>(new Map());
  const [more, setMore] = useState('');
  const ready = readyEngine();
  const { changes, problems } = ready
    ? changesOf(pile, day, texts, more, ready.lexicon)
    : { changes: [], problems: [] };
  return (
    <details class="papers-change not-printed">
      <summary>{say.changePile.changeTheWords}</summary>
      <form
        aria-label={say.changePile.changeTheWords}
        onSubmit={(event) => {
          event.preventDefault();
          changePile(pile, changes);
        }}
      >
        <label class="papers-field">
          <span>{say.changePile.writtenOnLeave}</span>
          <input
            type="date"
            value={day}
            max={today()}
            onInput={(event) => setDay(event.currentTarget.value)}
          />
        </label>
        <fieldset class="papers-words">
          <legend>{say.changePile.theWordsYouSaid}</legend>
          {pile.words.map(({ word, slot }, at) => (
            <input
              key={slot}
              type="text"
              aria-label={say.changePile.word(at + 1)}
              value={texts.get(slot) ?? word}
              spellcheck={false}
              autocomplete="off"
              onInput={(event) => setTexts(new Map(texts).set(slot, event.currentTarget.value))}
            />
          ))}
        </fieldset>
        <label class="papers-field">
          <span>{say.changePile.moreWords}</span>
          <input
            type="text"
            value={more}
            spellcheck={false}
            autocomplete="off"
            onInput={(event) => setMore(event.currentTarget.value)}
          />
        </label>
        {problems.map((problem) => (
          <p key={problem} class="papers-problem" role="alert">
            {problem}
          </p>
        ))}
        <p class="buttons">
          <button
            type="submit"
            class="button"
            disabled={changes.length === 0 || problems.length > 0}
          >
            {say.changePile.saveTheChange}
          </button>
        </p>
      </form>
    </details>
  );
}

/** What the form changes of the pile, and what cannot be. */
function changesOf(
  pile: PapersRecord,
  day: string,
  texts: ReadonlyMap<number, string>,
  more: string,
  lexicon: Lexicon,
): { readonly changes: readonly PapersChange[]; readonly problems: readonly string[] } {
  const changes: PapersChange[] = [];
  const problems: string[] = [];
  if (day !== (pile.day ?? '')) changes.push({ of: 'day', day: day === '' ? null : day });
  for (const { word, slot } of pile.words) {
    const text = (texts.get(slot) ?? word).trim().toLowerCase();
    if (text === word) continue;
    if (text === '') {
      changes.push({ of: 'word', word: slot, said: null });
      continue;
    }
    const { words, problems: told } = parseWords(text, lexicon);
    problems.push(...told.map(({ message }) => message));
    const [said, other] = words;
    if (other) problems.push(say.changePile.isMoreThanOne(text));
    else if (said) changes.push({ of: 'word', word: slot, said });
  }
  const added = parseWords(more, lexicon);
  problems.push(...added.problems.map(({ message }) => message));
  changes.push(
    ...added.words.map(
      (said, at): PapersChange => ({ of: 'word', word: pile.nextSlot + at, said }),
    ),
  );
  const left = pile.words.flatMap(({ word, slot }) => {
    const change = changes.find((one) => one.of === 'word' && one.word === slot);
    return change?.of === 'word' ? [] : [word];
  });
  for (const change of changes) {
    if (change.of !== 'word' || change.said === null) continue;
    const { word } = change.said;
    if (left.includes(word)) problems.push(say.changePile.isInThisPile(word));
    else left.push(word);
  }
  if (left.length === 0) {
    problems.push(say.changePile.aPileNeeds);
  }
  return { changes, problems };
}
