import { useEffect, useRef } from 'preact/hooks';
import { say } from './wording.ts';

interface ReadyProps {
  readonly name: string;
  readonly onStart: () => void;
  readonly onBack: () => void;
}

/** The moment before a minute: the clock starts when the child has its first row, not when a screen opens. */
export function Ready({ name, onStart, onBack }: ReadyProps) {
  const start = useRef<HTMLButtonElement>(null);
  useEffect(() => start.current?.focus(), []);
  return (
    <section class="check-ready" aria-labelledby="check-ready">
      <h1 id="check-ready">{say.ready.ready(name)}</h1>
      <p>{say.ready.turnThePaperOver}</p>
      <p class="check-begin">
        <button ref={start} type="button" class="button next" onClick={onStart}>
          {say.ready.showTheFirstRow}
        </button>
        <button type="button" class="button" onClick={onBack}>
          {say.ready.notYet}
        </button>
      </p>
    </section>
  );
}
