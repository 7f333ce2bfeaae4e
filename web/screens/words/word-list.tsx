import { useState } from 'preact/hooks';
import { asWritten } from '../../../core/language/as-written.ts';
import { CopyButton } from '../../controls/copy-button.tsx';
import { FileButton } from '../../controls/file-button.tsx';
import { Popover } from '../../controls/popover.tsx';
import type { Engine } from '../../state/engine.ts';
import type { FitEntries } from '../../state/fit-entries.ts';
import { progress } from '../../state/progress.ts';
import { wish } from '../../state/wish.ts';
import { listTitle } from '../../wording/list-title.ts';
import { WordSheet } from './word-sheet.tsx';
import { say } from './wording.ts';

const pageSize = 120;

/** The words found, a page at a time; each opens to its cards. Copy and print take all that is shown. */
export function WordList({ fit, ready }: { readonly fit: FitEntries; readonly ready: Engine }) {
  const [limit, setLimit] = useState(pageSize);
  const [open, setOpen] = useState<{ readonly anchor: HTMLElement; readonly index: number }>();
  const { lexicon } = ready;
  const title = listTitle(wish.value, progress.value);
  const shown = fit.entries.slice(0, limit);
  const paired = (fit.entries[0]?.length ?? 1) > 1;
  const spelled = (entry: readonly number[]) =>
    entry.map((index) => asWritten(lexicon.word(index))).join(' / ');
  return (
    <section class="found" aria-label={say.wordList.wordsFound}>
      <div class="found-head not-printed">
        <p role="status">
          {fit.done
            ? say.wordList.found(
                <b>{fit.entries.length.toLocaleString('en-US')}</b>,
                fit.entries.length,
                paired,
              )
            : say.wordList.counting}
          {fit.entries.length > shown.length && (
            <span class="quiet">{say.wordList.theFirstHere(shown.length)}</span>
          )}
        </p>
        <p class="buttons">
          <CopyButton
            name={say.wordList.copyTheList}
            text={() => shown.map(spelled).join('\n')}
            said={say.wordList.copied(shown.length, paired)}
          />
          <FileButton
            name={say.wordList.printSheet}
            make={async () => {
              const { sheetFile } = await import('../../state/paper/paper-file.ts');
              return sheetFile('words', { toRead: () => ({ title, words: shown.map(spelled) }) });
            }}
          />
        </p>
      </div>
      <p class="only-printed list-title">{title}</p>
      <ul
        class={paired ? 'entries pairs' : 'entries'}
        aria-label={paired ? say.wordList.pairsList : say.wordList.wordsList}
      >
        {shown.map((entry) => (
          <li key={entry.join(' ')}>
            {entry.map((index, side) => (
              <>
                {side > 0 && <span class="quiet between">/</span>}
                <button
                  key={index}
                  type="button"
                  class="entry"
                  aria-haspopup="dialog"
                  onClick={(event) => setOpen({ anchor: event.currentTarget, index })}
                >
                  {asWritten(lexicon.word(index))}
                </button>
              </>
            ))}
          </li>
        ))}
      </ul>
      {fit.entries.length > shown.length && (
        <p class="more not-printed">
          <button type="button" class="button" onClick={() => setLimit(limit + pageSize)}>
            {say.wordList.showMore}
          </button>
        </p>
      )}
      {open && (
        <Popover
          key={open.index}
          anchor={open.anchor}
          title={asWritten(lexicon.word(open.index))}
          onClose={() => setOpen(undefined)}
        >
          <WordSheet index={open.index} ready={ready} onClose={() => setOpen(undefined)} />
        </Popover>
      )}
    </section>
  );
}
