import { useEffect, useState } from 'preact/hooks';
import { recordNow } from '../../warm-up/running.ts';

/** How long the warm-up has run, in minutes and seconds; it stops at the end. */
export function Clock() {
  const [time, setTime] = useState(Date.now);
  useEffect(() => {
    const timer = setInterval(() => setTime(Date.now()), 1000);
    return () => clearInterval(timer);
  }, []);
  const record = recordNow.value;
  const passed = record ? (record.ended?.at ?? time) - record.at : 0;
  return (
    <p class="quiet desk-clock" role="timer" aria-label="Time since it began" aria-live="off">
      {timeSaid(passed)}
    </p>
  );
}

function timeSaid(milliseconds: number): string {
  const seconds = Math.max(0, Math.floor(milliseconds / 1000));
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}
