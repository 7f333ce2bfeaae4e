import { crc32 } from '../log/crc32.ts';
import type { EmptyRun, KeptRecord } from './record.ts';

/** How far a device has followed a class. */
export interface Followed {
  /** Everything up to this place is here. */
  readonly cursor: number;
  /** The trace of the records up to there (`traceAfter`). */
  readonly trace: number;
}

/** Nothing of a class is here yet. */
export const NOTHING: Followed = { cursor: 0, trace: 0 };

/**
 * The trace of a class's records: a check number over their ids in order, from that of the records before
 * and the next id; 0 for none. A server that was set back and has grown since has other records at the same
 * places: their number alone would not tell.
 */
export function traceAfter(trace: number, id: string): number {
  return crc32(`${trace} ${id}`);
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
  }: {
    readonly from: number;
    readonly to: number;
    readonly records: readonly (KeptRecord | EmptyRun)[];
  },
): { readonly followed: Followed; readonly fresh: readonly KeptRecord[] } | null {
  if (from > followed.cursor) return null;
  const fresh: KeptRecord[] = [];
  let { cursor, trace } = followed;
  let place = from;
  for (const one of records) {
    if (one.seq !== place + 1) return null;
    place = 'id' in one ? one.seq : one.to;
    if (place < one.seq) return null;
    if (place <= cursor) continue;
    cursor = place;
    trace = 'id' in one ? traceAfter(trace, one.id) : one.trace;
    if ('id' in one) fresh.push(one);
  }
  return place === to ? { followed: { cursor, trace }, fresh } : null;
}
