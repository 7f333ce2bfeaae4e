import type { ChildId } from '../../../core/ids.ts';
import { classState } from '../../state/open-class.ts';

/** What a child is called, one that has left included. */
export function childName(id: ChildId): string {
  return classState.value.children.get(id)?.name || 'a child';
}
