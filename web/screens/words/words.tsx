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
import { say } from './wording.ts';

/** The word finder: what she looks for on one side, what there is on the other. */
export function Words() {
  const ready = readyEngine();
  return (
    <>
      <div class="words-head not-printed">
        <h1>{say.words.findWords}</h1>
        <p class="quiet">{say.words.everyWordFit}</p>
      </div>
      <div class="finder">
        <Filters />
        {ready ? <Found ready={ready} /> : <Waiting />}
      </div>
    </>
  );
}

function Waiting() {
  if (engine.value !== 'failed') return <p class="quiet">{say.words.fetchingTheWordList}</p>;
  return (
    <div class="nothing">
      <p>{say.words.theWordListDid}</p>
      <button type="button" class="button" onClick={startEngine}>
        {say.words.tryAgain}
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
        <p>{say.words.nothingWasTaughtYet}</p>
        <p class="buttons">
          <a class="button next" href={linkTo('learned')}>
            {say.words.whatHaveTheyLearned}
          </a>
          <button type="button" class="button" onClick={() => setWish({ onlyTaught: false })}>
            {say.words.lookAmongAllWords}
          </button>
        </p>
      </div>
    );
  }
  return (
    <div class="nothing">
      <p>{onlyTaught ? say.words.noSuchWordCan : say.words.thereIsNoSuch}</p>
      <p class="buttons">
        {onlyTaught && (
          <button type="button" class="button" onClick={() => setWish({ onlyTaught: false })}>
            {say.words.lookAmongAllWords}
          </button>
        )}
        <button type="button" class="button" onClick={() => setWish({ ...ANY_WORD, onlyTaught })}>
          {say.words.beginAgain}
        </button>
      </p>
    </div>
  );
}
