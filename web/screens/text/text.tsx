import { soundStyle } from '../../state/accent.ts';
import './text.css';
import { useMemo } from 'preact/hooks';
import { judgePassagePaced } from '../../../core/texts/passage.ts';
import { PacedProgress, usePacedOutcome } from '../../controls/paced-outcome.tsx';
import { engine, readyEngine, startEngine } from '../../state/engine-ready.ts';
import { progress, taught } from '../../state/progress.ts';
import type { ReadingGroup } from './because.ts';
import { Blocked } from './blocked.tsx';
import { draft } from './draft.ts';
import { MarkedText } from './marked-text.tsx';
import { ReadOtherwise } from './read-otherwise.tsx';
import { TextField } from './text-field.tsx';
import { Verdict } from './verdict.tsx';
import { say } from './wording.ts';

/** Longer than a chapter book for these grades, in signs. */
const LONGEST = 1_000_000;
/** A longer one is judged piece by piece. */
const LONG = 50_000;

/** Is this text decodable? A text goes in; how much of it can be read, and why not the rest, comes out. */
export function TextPage() {
  const ready = readyEngine();
  const text = draft.value;
  const isLong = text.length > LONGEST;
  const known = taught.value;
  const { sequence, upTo } = progress.value;
  const notation = soundStyle.value;
  const judging = usePacedOutcome(
    text.length > LONG,
    () => (ready && !isLong ? judgePassagePaced(text, known, ready.lexicon, sequence) : null),
    [ready, text, isLong, known, sequence],
  );
  const passage = judging.outcome;
  const isJudging = judging.under.share !== null || judging.again !== null;
  const standing = useMemo<ReadingGroup>(
    () => ({ sequence, upTo, notation }),
    [sequence, upTo, notation],
  );
  return (
    <>
      <div class="text-head">
        <h1>{say.text.isThisTextDecodable}</h1>
        <p class="quiet not-printed">{say.text.forAClassTaught(upTo)}</p>
      </div>
      <div class="text-top">
        <TextField />
        {isLong ? (
          <p class="text-invites" role="status">
            {say.text.thisTextIsLonger}
          </p>
        ) : isJudging ? (
          <div class="text-invites">
            <PacedProgress
              of={judging}
              says={say.text.judgingTheText}
              stopped={say.text.stoppedTheText}
            />
          </div>
        ) : passage && passage.words > 0 ? (
          <Verdict passage={passage} standing={standing} />
        ) : (
          <Waiting isEmpty={passage !== null} />
        )}
      </div>
      {passage && passage.words > 0 && (
        <div class="text-rest">
          <MarkedText passage={passage} standing={standing} />
          <Blocked passage={passage} standing={standing} />
          <ReadOtherwise passage={passage} />
        </div>
      )}
    </>
  );
}

function Waiting({ isEmpty }: { readonly isEmpty: boolean }) {
  if (engine.value === 'failed') {
    return (
      <div class="text-invites">
        <p>{say.text.theWordListDid}</p>
        <button type="button" class="button" onClick={startEngine}>
          {say.text.tryAgain}
        </button>
      </div>
    );
  }
  return (
    <div class="text-invites quiet">
      {isEmpty ? <p>{say.text.pasteAPage}</p> : <p>{say.text.fetchingTheWordList}</p>}
    </div>
  );
}
