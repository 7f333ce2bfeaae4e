import type { ChildId } from '../../../core/ids.ts';
import { classState } from '../../state/open-class.ts';
import { say } from './wording.ts';

/** What a child is called, one that has left included. */
export function childName(id: ChildId): string {
  return classState.value.children.get(id)?.name || say.childName.aChild;
}
