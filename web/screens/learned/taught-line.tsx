import './taught-line.css';
import type { RefObject } from 'preact';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { type Boundary, boundaryOf, type StepBox, stepAt } from './boundary.ts';
import { say } from './wording.ts';

interface TaughtLineProps {
  readonly list: RefObject<HTMLElement | null>;
  readonly upTo: number;
  readonly last: number;
  /** The last step of each stage: where PageUp and PageDown stop. */
  readonly stops: readonly number[];
  readonly said: string;
  /** Anything that moves the steps on the page; the line is measured again when it changes. */
  readonly layout: unknown;
  /** While it is dragged: where it would come to stand; null when the drag is given up. */
  readonly onPreview: (upTo: number | null) => void;
  readonly onMove: (upTo: number) => void;
}

/** The teal line on the list: dragged by its knob or label, moved by the arrow keys. */
export function TaughtLine(props: TaughtLineProps) {
  const { list, upTo, last, stops, said, layout, onPreview, onMove } = props;
  const [line, setLine] = useState<Boundary & { readonly width: number }>();
  const label = useRef<HTMLDivElement>(null);

  useLayoutEffect(() => {
    const element = list.current;
    if (!element) return;
    const measure = () => {
      const boundary = boundaryOf(boxesIn(element), upTo);
      setLine({ ...boundary, width: element.clientWidth });
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, [upTo, layout]);

  // The line shows where the class stands: it is what she looks for when she comes here.
  const measured = line !== undefined;
  const hasBegun = useRef(upTo > 0).current;
  useEffect(() => {
    if (measured && hasBegun) label.current?.scrollIntoView({ block: 'nearest' });
  }, [measured, hasBegun]);

  const onKeyDown = (event: KeyboardEvent) => {
    const next = stepByKey(event.key, upTo, last, stops);
    if (next === null) return;
    event.preventDefault();
    onMove(next);
    requestAnimationFrame(() => label.current?.scrollIntoView({ block: 'nearest' }));
  };

  const onPointerDown = (event: PointerEvent) => {
    const element = list.current;
    const handle = event.currentTarget as HTMLElement;
    if (!element || event.button !== 0) return;
    event.preventDefault();
    label.current?.focus({ preventScroll: true });
    handle.setPointerCapture(event.pointerId);
    const over = new AbortController();
    let to: number | null = null;
    const onPointerMove = ({ clientX, clientY }: PointerEvent) => {
      const { left, top } = element.getBoundingClientRect();
      to = stepAt(boxesIn(element), clientX - left, clientY - top);
      onPreview(to);
      scrollNearEdge(clientY);
    };
    const end = (keep: boolean) => {
      over.abort();
      onPreview(null);
      if (keep && to !== null) onMove(to);
    };
    const { signal } = over;
    handle.addEventListener('pointermove', onPointerMove, { signal });
    handle.addEventListener('pointerup', () => end(true), { signal });
    handle.addEventListener('pointercancel', () => end(false), { signal });
  };

  return (
    <div class="taught-line">
      {line && (
        <svg aria-hidden="true" width={line.width} height="1">
          <path d={pathOf(line, line.width)} />
        </svg>
      )}
      <div
        ref={label}
        class="label"
        role="slider"
        tabIndex={0}
        aria-label={say.taughtLine.taughtUpToHere}
        aria-orientation="vertical"
        aria-valuemin={0}
        aria-valuemax={last}
        aria-valuenow={upTo}
        aria-valuetext={said}
        style={{ top: `${line?.high ?? 0}px` }}
        onKeyDown={onKeyDown}
        onPointerDown={onPointerDown}
      >
        <span>{say.taughtLine.taughtUp(<i>{say.taughtLine.toHere}</i>)}</span>
      </div>
      {line?.turn != null && (
        <div
          class="knob"
          style={{ left: `${line.turn}px`, top: `${(line.low + line.high) / 2}px` }}
          onPointerDown={onPointerDown}
        />
      )}
    </div>
  );
}

function boxesIn(list: HTMLElement): readonly StepBox[] {
  const origin = list.getBoundingClientRect();
  return [...list.querySelectorAll<HTMLElement>('[data-step]')].map((element) => {
    const { left, right, top, bottom } = element.getBoundingClientRect();
    return {
      number: Number(element.dataset.step),
      left: left - origin.left,
      right: right - origin.left,
      top: top - origin.top,
      bottom: bottom - origin.top,
    };
  });
}

function pathOf({ low, turn, high }: Boundary, width: number): string {
  if (turn === null)
    return `M3 ${low}C${width * 0.3} ${low - 2} ${width * 0.6} ${low + 2} ${width} ${low}`;
  const round = Math.min(10, (low - high) / 2);
  return [
    `M3 ${low}C${turn * 0.4} ${low - 1.5} ${turn * 0.7} ${low + 1.5} ${turn - round} ${low}`,
    `Q${turn} ${low} ${turn} ${low - round}`,
    `V${high + round}Q${turn} ${high} ${turn + round} ${high}H${width}`,
  ].join('');
}

function stepByKey(
  key: string,
  upTo: number,
  last: number,
  stops: readonly number[],
): number | null {
  if (key === 'ArrowDown' || key === 'ArrowRight') return Math.min(upTo + 1, last);
  if (key === 'ArrowUp' || key === 'ArrowLeft') return Math.max(upTo - 1, 0);
  if (key === 'PageDown') return stops.find((stop) => stop > upTo) ?? last;
  if (key === 'PageUp') return stops.findLast((stop) => stop < upTo) ?? 0;
  if (key === 'Home') return 0;
  return key === 'End' ? last : null;
}

function scrollNearEdge(y: number): void {
  if (y < 90) scrollBy(0, -14);
  else if (y > innerHeight - 140) scrollBy(0, 14);
}
