import type { LogEvent } from '../../../core/log/event.ts';
import type { Followed } from '../../../core/sharing/follower.ts';
import type { KeptRecord } from '../../../core/sharing/record.ts';

/** Where a device notes how far it is with one shared class. What fails rejects. */
export interface Ledger {
  read(): Promise<Noted>;
  /** Notes how far the class was followed, and what was said of rights up to there. */
  noteFollowed(followed: Followed, rights: readonly KeptRecord[]): Promise<void>;
  /** Events that are to be sent; noted before they count as kept here. */
  noteUnsent(events: readonly LogEvent[]): Promise<void>;
  /** Events that the server has. */
  noteSent(ids: readonly string[]): Promise<void>;
}

/** What was noted. */
export interface Noted {
  readonly followed: Followed;
  /** Every record on the lane of rights, in order. */
  readonly rights: readonly KeptRecord[];
  /** The ids of events still to be sent. */
  readonly unsent: readonly string[];
}
