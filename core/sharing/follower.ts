import type { KeptRecord } from './record.ts';

/** How far a device has followed a class. */
export interface Followed {
  /** The identity of the server's database; null before the first answer. */
  readonly born: string | null;
  /** Everything up to this place is here. */
  readonly cursor: number;
}

/** Nothing of a class is here yet. */
export const NOTHING: Followed = { born: null, cursor: 0 };

/** What the server says when it is asked to be followed. */
export interface Following {
  readonly born: string;
  readonly head: number;
}

/**
 * How to go on: from where it stood; or anew, from the beginning, when the server has lost what this
 * device knows of (another database, or one set back). Then all that is here is sent again, too.
 */
export function goOn(
  { born, cursor }: Followed,
  answer: Following,
): { readonly followed: Followed; readonly anew: boolean } {
  const anew = (born !== null && born !== answer.born) || answer.head < cursor;
  return { followed: { born: answer.born, cursor: anew ? 0 : cursor }, anew };
}

/**
 * The place after a batch of records, or null when something is missing between it and what is here, or
 * within it: then the connection is given up, and the next one asks again from the same place. Records
 * that are here already are left out.
 */
export function takeBatch(
  followed: Followed,
  {
    from,
    to,
    records,
  }: { readonly from: number; readonly to: number; readonly records: readonly KeptRecord[] },
): { readonly followed: Followed; readonly fresh: readonly KeptRecord[] } | null {
  const isWhole =
    to - from === records.length && records.every(({ seq }, place) => seq === from + 1 + place);
  if (!isWhole || from > followed.cursor) return null;
  const fresh = records.filter(({ seq }) => seq > followed.cursor);
  return { followed: { ...followed, cursor: Math.max(followed.cursor, to) }, fresh };
}
