import type { ChildId, GroupId } from '../ids.ts';
import type { ClassState } from './class-state.ts';
import { findStruck, isStruck } from './struck.ts';

/** A child that changed from one small group to another; null for none. */
export interface GroupMove {
  /** When, by the log's clock. */
  readonly at: number;
  readonly child: ChildId;
  readonly from: GroupId | null;
  readonly to: GroupId | null;
}

/** Every change of group that was not taken back, the latest first. */
export function groupMoves({ facts }: Pick<ClassState, 'facts'>): readonly GroupMove[] {
  const struck = findStruck(facts.undos);
  const now = new Map<ChildId, GroupId | null>();
  const moves: GroupMove[] = [];
  for (const event of facts.settings) {
    const { body } = event;
    if (body.of !== 'child' || body.field !== 'group' || isStruck(struck, event)) continue;
    const from = now.get(body.id) ?? null;
    if (from === body.value) continue;
    moves.push({ at: event.at, child: body.id, from, to: body.value });
    now.set(body.id, body.value);
  }
  return moves.reverse();
}
