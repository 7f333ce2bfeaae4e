import { useEffect, useState } from 'preact/hooks';
import { say } from './wording.ts';

interface TimeLeftProps {
  /** In milliseconds since 1970. */
  readonly until: number;
  readonly onOver: () => void;
}

/** How long something is still good, to the minute and at the end to the second. */
export function TimeLeft({ until, onOver }: TimeLeftProps) {
  const [seconds, setSeconds] = useState(() => left(until));
  useEffect(() => {
    const ticking = setInterval(() => {
      setSeconds(left(until));
      if (left(until) === 0) onOver();
    }, 1000);
    return () => clearInterval(ticking);
  }, [until]);
  const minutes = Math.ceil(seconds / 60);
  return (
    <>{seconds > 60 ? say.timeLeft.moreMinutes(minutes) : say.timeLeft.moreSeconds(seconds)}</>
  );
}

function left(until: number): number {
  return Math.max(0, Math.ceil((until - Date.now()) / 1000));
}
