import { computed, signal } from '@preact/signals';
import type { ClassId } from '../../core/ids.ts';
import type { Member } from '../../core/sharing/rights.ts';
import { sharedAs, store } from './open-class.ts';
import { sharing } from './sharing.ts';

const told = signal<{ readonly classId: ClassId; readonly ids: readonly string[] } | null>(null);

/** The devices that have come into the open class and of whom she was not told yet on this one. */
export const newcomers = computed<readonly Member[]>(() => {
  const now = sharing.value;
  const record = sharedAs.value;
  if (!now?.rights || record === null || now.classId !== record.classId) return [];
  const known = told.value?.classId === record.classId ? told.value.ids : record.told;
  const me = now.rights.members.get(now.device);
  // Who was there before this device came in is no news.
  const since = me?.since ?? Number.POSITIVE_INFINITY;
  return [...now.rights.members.values()].filter(
    (member) => !member.removed && member.since > since && known?.includes(member.id) !== true,
  );
});

/** She knows of these now. */
export function tellOf(ids: readonly string[]): void {
  const record = sharedAs.peek();
  if (record === null) return;
  const { classId } = record;
  const before = told.peek()?.classId === classId ? (told.peek()?.ids ?? []) : (record.told ?? []);
  const known = [...new Set([...before, ...ids])];
  told.value = { classId, ids: known };
  void store.shared.note(classId, { told: known });
}
