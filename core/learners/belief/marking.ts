import type { ChildId } from '../../ids.ts';
/**
 * How a teacher marks. Most mark what is right and what is wrong of a child who reads alone: `all`. A busy
 * one names a child only when it goes wrong. Then every reading of a child's own is wrong, and to
 * read them like the others would make each child fail at everything. While the class reads together as
 * well, `mistakes-beside-class`, what goes right there tells the other half; where mistakes are all there
 * is, `only-mistakes`, no one can tell levels.
 */
export type Marking = 'all' | 'mistakes-beside-class' | 'only-mistakes';

/** From so many readings of single children on it is said how she marks. */
const ENOUGH = 12;
/** Of children who are called on, more than this goes right, however weak they are. */
const MOST_RIGHT = 0.02;
/** So many readings together for each of a child's own tell what goes right. */
const ENOUGH_TOGETHER = 0.1;

/** What of a reading tells how she marks: see observation.ts. */
export interface MarkedReading {
  readonly task: 'read' | 'spell';
  readonly child: ChildId | null;
  readonly right: boolean;
  readonly from?: 'check' | 'mistake';
}

/** How these readings of one task were marked; short checks, marked in full, do not count. Linear. */
export function markingOf(
  observations: readonly MarkedReading[],
  task: MarkedReading['task'],
): Marking {
  let own = 0;
  let right = 0;
  let beside = 0;
  let together = 0;
  for (const one of observations) {
    if (one.task !== task || one.from === 'check') continue;
    if (one.child === null) {
      if (one.right) together += 1;
    } else {
      own += 1;
      if (one.right) right += 1;
      if (one.from === 'mistake') beside += 1;
    }
  }
  const isOnly = own >= ENOUGH && right <= MOST_RIGHT * own;
  // Where it is known how a child came to be named: those named by a mistake outweigh those called on.
  const isMostly = beside >= ENOUGH && beside > (own - right) / 2;
  if (!isOnly && !isMostly) return 'all';
  return together > ENOUGH_TOGETHER * own ? 'mistakes-beside-class' : 'only-mistakes';
}
