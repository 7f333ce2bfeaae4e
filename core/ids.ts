/**
 * The names by which a log knows things: texts of twenty signs drawn by chance, told apart here so that
 * the name of a child is never taken for the name of a group. What they say is nothing, so any text may be
 * one; a text becomes an id where it comes in (a new id, a file, an address), and nowhere else.
 */
declare const kind: unique symbol;
type Id<Of extends string> = string & { readonly [kind]: Of };

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
