import type { Paced } from '../core/paced.ts';

/** Where a terminal shows how far it is; a file or a pipe is not told. */
export interface ProgressLine {
  readonly isTTY?: boolean;
  write(text: string): unknown;
}

/**
 * Does paced work to its end and, where somebody looks on and it takes long, shows how far it is. Ctrl+C
 * stops it, since nothing is changed by it.
 */
export function inTerminal<Outcome>(
  work: Paced<Outcome>,
  says: string,
  to: ProgressLine = process.stderr,
  now: () => number = () => performance.now(),
): Outcome {
  const began = now();
  let shown = '';
  for (;;) {
    const step = work.next();
    if (step.done) {
      if (shown !== '') to.write(`\r${' '.repeat(shown.length)}\r`);
      return step.value;
    }
    const next = `${says} ${Math.floor(step.value * 100)} %`;
    if (to.isTTY !== true || next === shown || now() - began < QUIET) continue;
    to.write(`\r${next}`);
    shown = next;
  }
}

/** Milliseconds that need no word. */
const QUIET = 400;
