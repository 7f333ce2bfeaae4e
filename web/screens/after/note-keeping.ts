/**
 * Her line about a drill. What she types is put on this device's shelf at once
 * and into the log when she pauses or leaves, so that no way of closing the
 * window takes it: what is found on the shelf later goes into the log then.
 */
import type { DrillId } from '../../../core/ids.ts';
import type { DrillRecord } from '../../../core/log/class-state.ts';
import type { EventSpec } from '../../../core/log/event.ts';
import { noteDrafts as drafts } from '../../state/leftovers.ts';
import { classState, recordForGood, store } from '../../state/open-class.ts';

/** What she wrote of a drill: as typed, else as the log has it. */
export function noteOf(drillId: DrillId): string {
  return draftOf(drillId)?.text ?? noted(drillId)?.text ?? '';
}

/** Whether the note of a drill is in the log as it was typed. */
export function isNoteKept(drillId: DrillId): boolean {
  return draftOf(drillId) === undefined;
}

/** Takes what she types. */
export function typeNote({ id, groupId }: DrillRecord, text: string): void {
  const others = drafts.peek().filter(({ drillId }) => drillId !== id);
  const draft = { classId: classState.peek().id, groupId, drillId: id, text };
  drafts.value = [...others, draft];
}

/** Puts into the log what was typed in the open class and is not there yet. */
export async function keepNotes(): Promise<void> {
  const { id } = classState.peek();
  await Promise.all(drafts.peek().flatMap((each) => (each.classId === id ? keep(each) : [])));
}

async function keep(draft: Draft): Promise<void> {
  if (keeping.has(draft)) return;
  keeping.add(draft);
  if (await isInLog(draft)) drafts.value = drafts.peek().filter((each) => each !== draft);
  keeping.delete(draft);
}

/** Drafts on their way into the log. */
const keeping = new Set<Draft>();

async function isInLog({ drillId, groupId, text }: Draft): Promise<boolean> {
  const line = text.trim() === '' ? '' : text;
  const before = noted(drillId);
  if (line === (before?.text ?? '')) {
    return !store.unsaved.peek().some(({ id }) => id === before?.id);
  }
  const specs: EventSpec[] = [];
  if (before) specs.push({ kind: 'undone', body: { event: before.id } });
  if (line !== '') specs.push({ kind: 'noted', body: { drillId, groupId, text: line } });
  return recordForGood(...specs);
}

type Draft = (typeof drafts.value)[number];

function draftOf(drillId: DrillId): Draft | undefined {
  const { id } = classState.value;
  return drafts.value.find((each) => each.classId === id && each.drillId === drillId);
}

function noted(drillId: DrillId) {
  return classState.value.notes.findLast((note) => note.drillId === drillId);
}
