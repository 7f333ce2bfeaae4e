import { hiddenOnBoard } from '../../core/boards/judge/hidden-on-board.ts';
import './hidden.css';
import { useMemo } from 'preact/hooks';
import { tallyOfCounts } from '../../core/boards/judge/card-gain.ts';
import { hiddenCount } from '../../core/boards/judge/hidden-count.ts';
import type { OutcomeCounts } from '../../core/boards/search/best-board.ts';
import type { Board } from '../../core/boards/shapes/board.ts';
import type { HiddenWord } from '../../core/words/screen-report.ts';
import { settleWord } from '../state/class-words.ts';
import { readyEngine } from '../state/engine-ready.ts';
import { taught } from '../state/progress.ts';
import { hiddenInWords } from '../wording/hidden-words.ts';
import { say } from './wording.ts';

/** What stays hidden and why, in general words fit for any eyes. */
const reasons = [
  ['rule', say.hidden.wouldBreakASpelling],
  ['sound-alike', say.hidden.soundLikeAReal],
  ['name', say.hidden.areFirstNames],
  ['said-differently', say.hidden.areRealWords],
  ['screened', say.hidden.areNotForClass],
  ['untaught', say.hidden.haveACard],
] as const;

/** What this board says: all its combinations, and what the screen keeps hidden. */
export function Hidden({
  board,
  counts,
}: {
  readonly board: Board;
  readonly counts: OutcomeCounts;
}) {
  const tally = tallyOfCounts(counts);
  return (
    <div class="hidden">
      <p class="quiet">{say.hidden.realWordsAndNonsense(tally.real, tally.nonsense)}</p>
      {hiddenCount(tally).all > 0 && (
        <details>
          <summary>{hiddenInWords(tally)}</summary>
          <ul>
            {reasons.map(([outcome, why]) =>
              counts[outcome] === 0 ? null : (
                <li key={outcome}>
                  <b>{counts[outcome]}</b> {why}
                </li>
              ),
            )}
          </ul>
          {counts.screened > 0 && <NotForClass board={board} />}
        </details>
      )}
    </div>
  );
}

/** The words that the screen hides: what is hers to decide by name, the rest by its reason. */
function NotForClass({ board }: { readonly board: Board }) {
  const ready = readyEngine();
  const words = useMemo(
    () => (ready ? hiddenOnBoard(board, { taught: taught.peek(), ...ready }) : []),
    [ready, board],
  );
  const asked = words.filter(({ verdict }) => verdict === 'ask');
  const stopped = words.filter(({ verdict }) => verdict === 'stop');
  return (
    <>
      {asked.length > 0 && (
        <>
          <h3>{say.hidden.yoursToDecide}</h3>
          <HiddenList words={asked} />
        </>
      )}
      {stopped.length > 0 && (
        <>
          <h3>{say.hidden.neverShown}</h3>
          <ul>
            {countedReasons(stopped).map(([reason, count]) => (
              <li key={reason}>
                <b>{count}</b> {reason}
              </li>
            ))}
          </ul>
          <details>
            <summary>{say.hidden.spellThemOut}</summary>
            <HiddenList words={stopped} />
          </details>
        </>
      )}
    </>
  );
}

function HiddenList({ words }: { readonly words: readonly HiddenWord[] }) {
  return (
    <ul class="hidden-words">
      {words.map(({ word, sounds, reason }) => (
        <li key={`${word} ${sounds.join(' ')}`}>
          <span>
            <b>{word}</b> <span class="quiet">{reason}</span>
          </span>
          <button
            type="button"
            class="button plain"
            aria-label={say.hidden.allowInMyClass(word)}
            onClick={() => settleWord('allow', word)}
          >
            {say.hidden.allow}
          </button>
        </li>
      ))}
    </ul>
  );
}

function countedReasons(words: readonly HiddenWord[]): readonly (readonly [string, number])[] {
  const counts = new Map<string, number>();
  for (const { reason } of words) counts.set(reason, (counts.get(reason) ?? 0) + 1);
  return [...counts].sort((one, other) => other[1] - one[1]);
}
