import type { MapCell } from '../../../core/facts/class-map.ts';
import type { ChildChances } from '../../../core/learners/suggest-groups.ts';
import type { Child } from '../../../core/log/class-state.ts';
import { mapFor, taughtToChild } from '../../state/class-now.ts';

/**
 * Each child's chance of reading each sound that it was taught and that one of these children at
 * least has read alone: of a sound that nobody read nothing is known yet that could part them.
 */
export function chancesOf(all: readonly Child[]): readonly ChildChances[] {
  const rows = all.map((child) => ({ child, cells: cellsOf(child) }));
  const seen = new Set(
    rows.flatMap(({ cells }) =>
      cells.flatMap(({ card, estimate }) => (estimate.n > 0 ? card : [])),
    ),
  );
  return rows.map(({ child, cells }) => ({
    id: child.id,
    chances: new Map(
      cells.flatMap(({ card, estimate }) => (seen.has(card) ? [[card, estimate.p] as const] : [])),
    ),
  }));
}

function cellsOf(child: Child): readonly MapCell[] {
  return mapFor([{ of: 'child', id: child.id }], taughtToChild(child))[0]?.cells ?? [];
}
