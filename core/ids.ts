/**
 * The names by which a log knows things: texts of twenty signs drawn by chance, told apart here so that
 * the name of a child is never taken for the name of a group. What they say is nothing, so any text may be
 * one; a text becomes an id where it comes in (a new id, a file, a database, an address), and nowhere else. Words
 * of the list have no ids: a word is known by how it is written, and a word known whole is a card, with the id
 * of a card (language/card-id.ts).
 */
declare const kind: unique symbol;
type Id<Of extends string> = string & { readonly [kind]: Of };

/** A class. */
export type ClassId = Id<'class'>;

/** A text as the id of a class. */
export function classId(text: string): ClassId {
  return text as ClassId;
}

/** Whether something read from a file or a store may be the id of a class. */
export function isClassId(value: unknown): value is ClassId {
  return typeof value === 'string';
}

/** A child of a class. */
export type ChildId = Id<'child'>;

/** A text as the id of a child. */
export function childId(text: string): ChildId {
  return text as ChildId;
}

/** Whether something read from a file or a store may be the id of a child. */
export function isChildId(value: unknown): value is ChildId {
  return typeof value === 'string';
}

/** A group of a class: the whole class or a small one. */
export type GroupId = Id<'group'>;

/** A text as the id of a group. */
export function groupId(text: string): GroupId {
  return text as GroupId;
}

/** Whether something read from a file or a store may be the id of a group. */
export function isGroupId(value: unknown): value is GroupId {
  return typeof value === 'string';
}

/** A warm-up that was begun. */
export type DrillId = Id<'drill'>;

/** A text as the id of a drill. */
export function drillId(text: string): DrillId {
  return text as DrillId;
}

/** Whether something read from a file or a store may be the id of a drill. */
export function isDrillId(value: unknown): value is DrillId {
  return typeof value === 'string';
}

/** Something that happened in a class. */
export type EventId = Id<'event'>;

/** A text as the id of an event. */
export function eventId(text: string): EventId {
  return text as EventId;
}

/** Whether something read from a file or a store may be the id of an event. */
export function isEventId(value: unknown): value is EventId {
  return typeof value === 'string';
}

/** A short check that was begun. */
export type CheckId = Id<'check'>;

/** A text as the id of a short check. */
export function checkId(text: string): CheckId {
  return text as CheckId;
}

/** Whether something read from a file or a store may be the id of a short check. */
export function isCheckId(value: unknown): value is CheckId {
  return typeof value === 'string';
}

/** A pile of spelling papers. */
export type PapersId = Id<'papers'>;

/** A text as the id of a pile of papers. */
export function papersId(text: string): PapersId {
  return text as PapersId;
}

/** Whether something read from a file or a store may be the id of a pile of papers. */
export function isPapersId(value: unknown): value is PapersId {
  return typeof value === 'string';
}
