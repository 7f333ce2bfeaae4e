import { useEffect, useMemo, useState } from 'preact/hooks';
import { atOnce, type Paced } from '../../core/paced.ts';
import { atLeisure } from '../device/at-leisure.ts';
import { Progress, type UnderWay } from './under-way.tsx';
import { say } from './wording.ts';

/** What comes of work that follows what she types or chooses. */
export interface PacedOutcome<Outcome> {
  /** Null while it is under way, when it was stopped, and when there is nothing to do. */
  readonly outcome: Outcome | null;
  /** How far it is, for a bar, and how to stop it. */
  readonly under: Pick<UnderWay, 'share' | 'stop'>;
  /** Takes it up again; null unless she stopped it. */
  readonly again: (() => void) | null;
}

/**
 * Does work again whenever one of its inputs changes: at once when it is short, else piece by piece, so that
 * the page answers meanwhile. What was begun on earlier inputs is given up. `makeWork` gives null when there
 * is nothing to do.
 */
export function usePacedOutcome<Outcome>(
  isLong: boolean,
  makeWork: () => Paced<Outcome> | null,
  inputs: readonly unknown[],
): PacedOutcome<Outcome> {
  const quick = useMemo(() => {
    const work = isLong ? null : makeWork();
    return work && atOnce(work);
  }, [isLong, ...inputs]);
  const [tries, setTries] = useState(0);
  const [at, setAt] = useState<SoFar<Outcome>>(NOTHING);
  useEffect(() => {
    const work = isLong ? makeWork() : null;
    setAt(NOTHING);
    if (work === null) return;
    const stopping = new AbortController();
    const stop = () => {
      stopping.abort();
      setAt({ ...NOTHING, isStopped: true });
    };
    const pace = atLeisure((share) => setAt({ ...NOTHING, share, stop }), stopping.signal);
    void pace(work).then((outcome) => {
      if (outcome !== null) setAt({ ...NOTHING, outcome });
    });
    return () => stopping.abort();
  }, [isLong, ...inputs, tries]);
  const { outcome, share, stop, isStopped } = isLong ? at : NOTHING;
  return {
    outcome: isLong ? outcome : quick,
    under: { share, stop },
    again: isStopped ? () => setTries(tries + 1) : null,
  };
}

/** How far it is and a button that stops it; once stopped, what that means and a button that takes it up again. */
export function PacedProgress({
  of: { under, again },
  says,
  stopped,
}: {
  readonly of: Pick<PacedOutcome<unknown>, 'under' | 'again'>;
  readonly says: string;
  readonly stopped: string;
}) {
  if (again === null) return <Progress under={under} says={says} />;
  return (
    <div class="progress-bar">
      <span>{stopped}</span>
      <button type="button" class="button" onClick={again}>
        {say.pacedOutcome.readItAfterAll}
      </button>
    </div>
  );
}

interface SoFar<Outcome> {
  readonly outcome: Outcome | null;
  readonly share: number | null;
  readonly stop: (() => void) | null;
  readonly isStopped: boolean;
}

const NOTHING = { outcome: null, share: null, stop: null, isStopped: false } as const;
