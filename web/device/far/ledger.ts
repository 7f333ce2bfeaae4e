import type { EventId } from '../../../core/ids.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import type { Followed } from '../../../core/sharing/follower.ts';
import type { KeptRecord } from '../../../core/sharing/record.ts';

/** Where a device notes how far it is with one shared class. What fails rejects. */
export interface Ledger {
  read(): Promise<LedgerNoted>;
  /**
   * Notes how far the class was followed, what was said of rights up to there, and when each device was
   * heard of last.
   */
  noteFollowed(
    followed: Followed,
    rights: readonly KeptRecord[],
    seen: Readonly<Record<string, number>>,
  ): Promise<void>;
  /** Events that are to be sent, again or at last; what is recorded here is noted by its store. */
  noteUnsent(events: readonly LogEvent[]): Promise<void>;
  /** Events that were not taken, by their ids, and why; they are not sent again. */
  noteAside(aside: ReadonlyMap<EventId, string>): Promise<void>;
  /** Events that the server has. */
  noteSent(ids: readonly EventId[]): Promise<void>;
}

/** What was noted. */
export interface LedgerNoted {
  readonly followed: Followed;
  /** Every record on the lane of rights, in order. */
  readonly rights: readonly KeptRecord[];
  /** The ids of events still to be sent. */
  readonly unsent: readonly EventId[];
  /** Those that were not taken, and why. */
  readonly aside: ReadonlyMap<EventId, string>;
  /** When each device was heard of last, by the server's clock in milliseconds. */
  readonly seen: Readonly<Record<string, number>>;
}
