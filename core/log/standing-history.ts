import type { GroupId } from '../ids.ts';
import type { ClassState } from './class-state.ts';
import type { GroupPlace } from './group-place.ts';
import { findStruck, isStruck } from './struck.ts';

/** Every place at which a group was said to stand and that was not taken back, oldest first, by the log's clock. */
export function standingHistory(
  { facts }: Pick<ClassState, 'facts'>,
  groupId: GroupId,
): readonly { readonly at: number; readonly standing: GroupPlace }[] {
  const struck = findStruck(facts.undos);
  return facts.settings.flatMap((event) => {
    const { body } = event;
    const isAsked = body.of === 'group' && body.id === groupId && body.field === 'standing';
    return isAsked && !isStruck(struck, event) ? [{ at: event.at, standing: body.value }] : [];
  });
}
