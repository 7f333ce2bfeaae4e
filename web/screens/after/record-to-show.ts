import type { DrillRecord } from '../../../core/log/class-state.ts';
import { drillsOf } from '../../../core/log/recent.ts';
import { classState, group } from '../../state/open-class.ts';

/** The warm-up that was asked for by id, if it is the class's; else the group's last; null for none yet. */
export function recordToShow(asked: string | null): DrillRecord | null {
  const named = asked === null ? undefined : classState.value.drills.get(asked);
  return named ?? drillsOf(classState.value, group.value.id).at(-1) ?? null;
}
