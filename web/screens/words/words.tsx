import './words.css';
import { useMemo } from 'preact/hooks';
import { FirstTime } from '../../controls/first-time.tsx';
import type { Engine } from '../../state/engine.ts';
import { engine, readyEngine, startEngine } from '../../state/engine-ready.ts';
import { find } from '../../state/find.ts';
import { useFitEntries } from '../../state/fit-entries.ts';
import { progress, taught } from '../../state/progress.ts';
import { linkTo } from '../../state/route.ts';
import { ANY_WORD, setWish, wish } from '../../state/wish.ts';
import { Filters } from './filters.tsx';
import { WordList } from './word-list.tsx';

/** The word finder: what she looks for on one side, what there is on the other. */
export function Words() {
  const ready = readyEngine();
  return (
    <>
      <div class="words-head not-printed">
        <h1>Find words</h1>
        <p class="quiet">Every word fit for class, taken apart into its cards.</p>
      </div>
      <div class="finder">
        <Filters />
        {ready ? <Found ready={ready} /> : <Waiting />}
      </div>
    </>
  );
}

function Waiting() {
  if (engine.value !== 'failed') return <p class="quiet">Fetching the word list …</p>;
  return (
    <div class="nothing">
      <p>
        The word list did not arrive. Once it has been loaded, everything works without a network.
      </p>
      <button type="button" class="button" onClick={startEngine}>
        Try again
      </button>
    </div>
  );
}

function Found({ ready }: { readonly ready: Engine }) {
  const asked = wish.value;
  const known = taught.value;
  const entries = useMemo(() => find(asked, known, ready), [asked, known, ready]);
  const fit = useFitEntries(entries, asked.asked, ready);
  if (fit.done && fit.entries.length === 0) return <Nothing />;
  return (
    <>
      {asked.onlyTaught && <FirstTime of="decodable" />}
      <WordList key={listKey(entries)} fit={fit} ready={ready} />
    </>
  );
}

/** Another list begins at its top again. */
function listKey(entries: readonly (readonly number[])[]): string {
  return `${entries.length} ${entries[0]} ${entries.at(-1)}`;
}

function Nothing() {
  const { onlyTaught } = wish.value;
  if (onlyTaught && progress.value.upTo === 0) {
    return (
      <div class="nothing">
        <p>
          Nothing was taught yet, so there is nothing to read. Show how far your class has come, or
          look among all words.
        </p>
        <p class="buttons">
          <a class="button next" href={linkTo('learned')}>
            What have they learned?
          </a>
          <button type="button" class="button" onClick={() => setWish({ onlyTaught: false })}>
            Look among all words
          </button>
        </p>
      </div>
    );
  }
  return (
    <div class="nothing">
      <p>
        {onlyTaught
          ? 'No such word can be read with what was taught so far. Ask for less, or look among all words.'
          : 'There is no such word. Ask for less.'}
      </p>
      <p class="buttons">
        {onlyTaught && (
          <button type="button" class="button" onClick={() => setWish({ onlyTaught: false })}>
            Look among all words
          </button>
        )}
        <button type="button" class="button" onClick={() => setWish({ ...ANY_WORD, onlyTaught })}>
          Begin again
        </button>
      </p>
    </div>
  );
}
