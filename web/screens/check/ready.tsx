import { useEffect, useRef } from 'preact/hooks';

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
      <h1 id="check-ready">Ready, {name}?</h1>
      <p>
        Turn the paper over, or look to the second window: its first row appears as you start. The
        minute begins then.
      </p>
      <p class="check-begin">
        <button ref={start} type="button" class="button next" onClick={onStart}>
          Show the first row and start the clock
        </button>
        <button type="button" class="button" onClick={onBack}>
          Not yet
        </button>
      </p>
    </section>
  );
}
