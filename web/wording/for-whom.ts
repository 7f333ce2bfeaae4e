import { WHOLE_CLASS } from '../../core/log/class-state.ts';
import { classState, group, groupName } from '../state/open-class.ts';

/** For whom today's plan is, in words: the class where it has a name, and the group at work. */
export function forWhom(): string {
  const { id, name } = group.value;
  const who = id === WHOLE_CLASS && name === '' ? 'the whole class' : groupName.value;
  const { name: className } = classState.value;
  return className === '' ? who : `${className}, ${who}`;
}
