import './under-way.css';
import { useRef, useState } from 'preact/hooks';
import type { PacedBy } from '../../core/paced.ts';
import { atLeisure } from '../device/at-leisure.ts';
import { say } from './wording.ts';

/** Long work that shows how far it is and can be stopped, one at a time. */
export interface UnderWay {
  /** Does the work; from `onKeeping` on, it cannot be stopped any more. */
  readonly run: (work: (pace: PacedBy, onKeeping: () => void) => Promise<void>) => Promise<void>;
  /** How far it is; null while nothing is under way. */
  readonly share: number | null;
  /** Stops it; null once it cannot be stopped. */
  readonly stop: (() => void) | null;
}

/** For a part of a screen that does long work. */
export function useUnderWay(): UnderWay {
  const [share, setShare] = useState<number | null>(null);
  const [canStop, setCanStop] = useState(false);
  const stopping = useRef<AbortController | null>(null);
  return {
    share,
    stop: canStop ? () => stopping.current?.abort() : null,
    async run(work) {
      stopping.current = new AbortController();
      setShare(0);
      setCanStop(true);
      try {
        await work(atLeisure(setShare, stopping.current.signal), () => setCanStop(false));
      } finally {
        setShare(null);
        setCanStop(false);
      }
    },
  };
}

/** A bar that shows how far work is, and a button that stops it. */
export function Progress({
  under: { share, stop },
  says,
}: {
  readonly under: Pick<UnderWay, 'share' | 'stop'>;
  readonly says: string;
}) {
  if (share === null) return null;
  return (
    <div class="progress-bar">
      <span>{says}</span>
      <progress aria-label={says} {...(stop ? { value: share, max: 1 } : {})} />
      {stop && (
        <button type="button" class="button" onClick={stop}>
          {say.underWay.stop}
        </button>
      )}
    </div>
  );
}
