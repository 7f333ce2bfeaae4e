import { useEffect, useState } from 'preact/hooks';
import type { CheckRecord } from '../../../core/log/class-state.ts';
import { say } from './wording.ts';

/** How long a check has run, in seconds: never more than its minute; null when it is untimed. */
export function secondsOf({ at, limit }: CheckRecord, now: number): number | null {
  if (limit === null) return null;
  return Math.min(limit, Math.max(1, Math.round((now - at) / 100) / 10));
}

/** Whether the minute is over; looked at again when it is. Never, where there is no clock. */
export function useMinuteOver({ at, limit, ended }: CheckRecord): boolean {
  const end = limit === null || ended !== null ? Number.POSITIVE_INFINITY : at + limit * 1000;
  const [isOver, setOver] = useState(() => Date.now() >= end);
  useEffect(() => {
    const look = () => setOver(Date.now() >= end);
    look();
    if (!Number.isFinite(end)) return;
    const timer = setInterval(look, 250);
    return () => clearInterval(timer);
  }, [end]);
  return isOver;
}

/** The seconds that are left; it stops at the end and says no more. */
export function CheckClock({ record }: { readonly record: CheckRecord }) {
  const [now, setNow] = useState(Date.now);
  const { limit } = record;
  useEffect(() => {
    const timer = setInterval(() => setNow(Date.now()), 250);
    return () => clearInterval(timer);
  }, []);
  if (limit === null) return <p class="quiet check-clock no-clock">{say.clock.noClock}</p>;
  const left = Math.ceil(limit - (secondsOf(record, now) ?? 0));
  return (
    <p class={`check-clock${left === 0 ? ' over' : ''}`} role="timer" aria-live="off">
      <span class="for-ears">{say.clock.secondsLeft} </span>
      <span>{left}</span>
      <span class="check-clock-line" aria-hidden="true" style={{ '--left': left / limit }} />
    </p>
  );
}
