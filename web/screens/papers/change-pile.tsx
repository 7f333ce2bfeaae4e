import { useState } from 'preact/hooks';
import type { PapersChange } from '../../../core/log/event.ts';
import type { PapersRecord } from '../../../core/log/papers-record.ts';
import { parseWords } from '../../../core/papers/said-words.ts';
import type { Lexicon } from '../../../core/words/lexicon.ts';
import { today } from '../../state/day.ts';
import { readyEngine } from '../../state/engine-ready.ts';
import { changePile } from '../../state/papers.ts';

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
      <summary>Change the words or the day</summary>
      <form
        aria-label="Change the words or the day"
        onSubmit={(event) => {
          event.preventDefault();
          changePile(pile, changes);
        }}
      >
        <label class="papers-field">
          <span>Written on (leave it empty for no date)</span>
          <input
            type="date"
            value={day}
            max={today()}
            onInput={(event) => setDay(event.currentTarget.value)}
          />
        </label>
        <fieldset class="papers-words">
          <legend>The words you said (empty one to take it out)</legend>
          {pile.words.map(({ word, slot }, at) => (
            <input
              key={slot}
              type="text"
              aria-label={`Word ${at + 1}`}
              value={texts.get(slot) ?? word}
              spellcheck={false}
              autocomplete="off"
              onInput={(event) => setTexts(new Map(texts).set(slot, event.currentTarget.value))}
            />
          ))}
        </fieldset>
        <label class="papers-field">
          <span>More words</span>
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
            Save the change
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
    if (other) problems.push(`“${text}” is more than one word. Put the others under More words.`);
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
    if (left.includes(word)) problems.push(`“${word}” is in this pile already.`);
    else left.push(word);
  }
  if (left.length === 0) {
    problems.push('A pile needs a word. To be rid of it, take these papers out.');
  }
  return { changes, problems };
}
