import './sweep.css';
import type { Ref } from 'preact';

interface SweepProps {
  /** Where the row begins and ends, in pixels from the middle of the screen. */
  readonly from: number;
  readonly to: number;
  readonly thick: number;
  readonly pace: number;
  /** Counts the sweeps of this row; zero draws nothing. */
  readonly count: number;
  /** The count of a sweep that a finger has drawn: it is simply there. */
  readonly drawn: number;
  readonly line: Ref<SVGPathElement>;
}

/** The sweep line: a brush stroke that glides under the row. */
export function Sweep({ from, to, thick, pace, count, drawn, line }: SweepProps) {
  const width = to - from;
  return (
    <svg
      class="sweep"
      aria-hidden="true"
      width={width}
      height={thick * 3}
      style={{ marginLeft: `${from}px` }}
    >
      <path
        ref={line}
        key={count}
        class={count === 0 ? 'still' : count === drawn ? 'drawn' : 'gliding'}
        d={strokePath(width, thick)}
        pathLength={1}
        stroke-width={thick}
        style={{ animationDuration: `${pace}ms` }}
      />
    </svg>
  );
}

/** A stroke as a hand draws it: almost straight. */
function strokePath(width: number, thick: number): string {
  const half = thick / 2;
  const y = thick * 1.4;
  return [
    `M${half} ${y - thick * 0.1}`,
    `C${width * 0.3} ${y + thick * 0.35} ${width * 0.55} ${y - thick * 0.4} ${width * 0.76} ${y}`,
    `S${width * 0.95} ${y + thick * 0.35} ${width - half} ${y + thick * 0.25}`,
  ].join('');
}
