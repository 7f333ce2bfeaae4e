import { computed } from '@preact/signals';
import { type Child, WHOLE_CLASS } from '../../core/log/class-state.ts';
import { childrenOf } from '../../core/log/roster.ts';
import { groupOf } from '../../core/log/roster-changes.ts';
import type { Progress } from '../../core/sequence/progress.ts';
import { classState } from './open-class.ts';
import { progressAt } from './progress.ts';

/** All children of the open class, in her order of names. */
export const everyone = computed<readonly Child[]>(() => childrenOf(classState.value, WHOLE_CLASS));

/** Where a child's own group stands; the whole class, when the child is in none. */
export function progressOfChild(child: Child): Progress {
  const state = classState.value;
  const own = groupOf(state, child) ?? state.groups.get(WHOLE_CLASS);
  return progressAt(own?.standing ?? null);
}
