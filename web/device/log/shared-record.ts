import type { ClassId, EventId } from '../../../core/ids.ts';
import type { Followed } from '../../../core/sharing/follower.ts';
import type { KeptRecord } from '../../../core/sharing/record.ts';

/** A device's or an invitation's two pairs of keys, as the browser holds them. */
export interface HeldKeys {
  readonly sign: CryptoKeyPair;
  readonly box: CryptoKeyPair;
}

/** How this device takes part in one shared class. */
export interface SharedRecord {
  readonly classId: ClassId;
  /** What events written here say in `by`. */
  readonly by: string;
  /** Keys for this class alone; the browser gives them to nobody. */
  readonly keys: HeldKeys;
  /** The device that shared the class first. */
  readonly founder: string;
  /** With which this device came in; null for the one that shared it. */
  readonly invitation: { readonly id: string; readonly keys: HeldKeys } | null;
  readonly followed: Followed;
  /** Every record on the lane of rights up to there, in order. */
  readonly rights: readonly KeptRecord[];
  /** When each device was heard of last, by its id, by the server's clock in milliseconds. */
  readonly seen: Readonly<Record<string, number>>;
  /** Those who have come in, by id, of whom she was told on this device; null until the first are known. */
  readonly told: readonly string[] | null;
}

/** An event that is still to be sent, or was not taken, and why. */
export interface Unsent {
  readonly classId: ClassId;
  readonly id: EventId;
  readonly why: string | null;
}
