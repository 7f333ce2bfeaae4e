/** A step's place on the page, in pixels from the list's upper left corner. */
export interface StepBox {
  readonly number: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Where the line runs: under what is taught, up beside it, and above what is still to come. */
export interface Boundary {
  /** Height of the left part, under the last taught step's line. */
  readonly low: number;
  /** Where it turns upward, or null when it runs straight across. */
  readonly turn: number | null;
  /** Height of the right part. */
  readonly high: number;
}

/** The gap between two lines of steps, halved: the line runs in its middle. */
const half = 7;

/**
 * The line that parts taught from untaught steps, as a reader's eye would draw
 * it through lines of text. Boxes are in order; `upTo` is the last taught step.
 */
export function boundaryOf(boxes: readonly StepBox[], upTo: number): Boundary {
  const place = boxes.findLastIndex((box) => box.number <= upTo);
  const last = boxes[place];
  const next = boxes[place + 1];
  if (!last) {
    const top = (next?.top ?? 0) - half;
    return { low: top, turn: null, high: top };
  }
  const low = last.bottom + half;
  if (!next || next.top >= last.bottom) return { low, turn: null, high: low };
  return { low, turn: (last.right + next.left) / 2, high: last.top - half };
}

/** The last step that lies before a point, line by line and from left to right; 0 when none does. */
export function stepAt(boxes: readonly StepBox[], x: number, y: number): number {
  let found = 0;
  for (const box of boxes) {
    const above = box.bottom < y;
    const beside = box.top - 2 * half <= y && (box.left + box.right) / 2 <= x;
    if (above || beside) found = box.number;
  }
  return found;
}
