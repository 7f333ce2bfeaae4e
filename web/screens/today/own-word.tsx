import { useState } from 'preact/hooks';
import type { Drill } from '../../../core/drills/drill.ts';
import { ownFlip, withFlip } from '../../../core/drills/own-flip.ts';
import { Popover } from '../../controls/popover.tsx';
import { readyEngine } from '../../state/engine-ready.ts';
import { setPinned } from '../../state/pins.ts';
import { setDrill } from '../../state/plan.ts';
import { taught } from '../../state/progress.ts';
import { changeAsOne } from '../../state/undo.ts';
import { say } from './wording.ts';

/** A word of her own in the run: laid where the fewest cards turn at once; or said why it cannot be. */
export function OwnWord({ drill }: { readonly drill: Drill }) {
  const [anchor, setAnchor] = useState<HTMLElement>();
  if (drill.run.length === 0) return null;
  return (
    <>
      <button
        type="button"
        class="button plain"
        aria-haspopup="dialog"
        onClick={(event) => setAnchor(event.currentTarget)}
      >
        {say.ownWord.addAWord}
      </button>
      {anchor && (
        <Popover anchor={anchor} title={say.ownWord.aWord} onClose={() => setAnchor(undefined)}>
          <Write
            drill={drill}
            onDone={() => {
              setAnchor(undefined);
              anchor.focus();
            }}
          />
        </Popover>
      )}
    </>
  );
}

function Write({ drill, onDone }: { readonly drill: Drill; readonly onDone: () => void }) {
  const [word, setWord] = useState('');
  const [everyDay, setEveryDay] = useState(false);
  const [refused, setRefused] = useState('');
  const add = () => {
    const ready = readyEngine();
    if (!ready) return;
    const own = ownFlip(word, drill, { taught: taught.peek(), ...ready });
    if (own.kind === 'refused') {
      setRefused(own.message);
      return;
    }
    const { flip } = own;
    changeAsOne(say.ownWord.added(flip.word), () => {
      if (everyDay) setPinned('words', flip.word, true);
      setDrill({ ...drill, run: withFlip(drill.run, flip) }, say.ownWord.added(flip.word));
    });
    onDone();
  };
  return (
    <form
      class="own-word"
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      <input
        autofocus
        type="text"
        aria-label={say.ownWord.theWord}
        autocomplete="off"
        autocapitalize="off"
        spellcheck={false}
        maxLength={20}
        value={word}
        onInput={({ currentTarget }) => {
          setWord(currentTarget.value);
          setRefused('');
        }}
      />
      <label>
        <input
          type="checkbox"
          checked={everyDay}
          onChange={({ currentTarget }) => setEveryDay(currentTarget.checked)}
        />{' '}
        {say.ownWord.everyDay}
      </label>
      <p role="status">{refused}</p>
      <button type="submit" class="button" disabled={word.trim() === ''}>
        {say.ownWord.putIt}
      </button>
    </form>
  );
}
