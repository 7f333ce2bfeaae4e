import { useRef } from 'preact/hooks';

/** A finger drawn under the row: how far it must go to count as a sweep. */
const enough = 0.85;
const dragStarts = 12;

interface Drag {
  readonly pointer: number;
  readonly startX: number;
  readonly from: number;
  readonly to: number;
  moved: boolean;
}

/**
 * Draws the sweep line after a finger or pen: `start` under the row, `move`,
 * and `end`, which says what was drawn by hand: the whole line, or less, which
 * draws back; null when nothing was, so that a tap is meant. The line is set
 * directly on its element: nothing else changes.
 */
export function useSweepDrag(pace: number) {
  const line = useRef<SVGPathElement>(null);
  const drag = useRef<Drag>(undefined);

  const show = (share: number) => {
    const path = line.current;
    if (!path) return;
    path.style.animation = 'none';
    path.style.visibility = 'visible';
    path.style.strokeDashoffset = String(1 - share);
  };

  return {
    line,
    start(event: PointerEvent, middle: number, from: number, to: number) {
      drag.current = {
        pointer: event.pointerId,
        startX: event.clientX,
        from: middle + from,
        to: middle + to,
        moved: false,
      };
    },
    move(event: PointerEvent) {
      const now = drag.current;
      if (!now || now.pointer !== event.pointerId) return;
      if (Math.abs(event.clientX - now.startX) > dragStarts) now.moved = true;
      if (now.moved) show(shareOf(now, event.clientX));
    },
    end(event: PointerEvent): 'swept' | 'drawn-back' | null {
      const now = drag.current;
      drag.current = undefined;
      if (!now?.moved) return null;
      const path = line.current;
      const share = shareOf(now, event.clientX);
      if (path) {
        path.style.transition = `stroke-dashoffset ${Math.round(pace / 3)}ms`;
        path.style.strokeDashoffset = share > enough ? '0' : '1';
      }
      return share > enough ? 'swept' : 'drawn-back';
    },
  };
}

function shareOf({ from, to }: Drag, x: number): number {
  return Math.min(Math.max((x - from) / (to - from), 0), 1);
}
