import type { LogEvent } from '../../../core/log/event.ts';
import type { StoreError } from '../../../core/log/event-store.ts';
import type { DeviceMessage, ServerMessage } from '../../../core/sharing/message.ts';
import type { ClassRecord } from '../../../core/sharing/record.ts';
import type { SharedClass } from './shared-class.ts';

/** A shared class kept in step with a server. */
export interface FarClass {
  /** Where what was recorded here is by now. */
  readonly state: () => FarState;
  /** The class as this device reads and writes it. */
  readonly shared: () => SharedClass;
  /** When each device was heard of last, by its id, by the server's clock in milliseconds. */
  readonly seen: () => Readonly<Record<string, number>>;
  /** The server's clock in milliseconds, as far as it is known: what an invitation's time is counted by. */
  now(): number;
  /** Sends events that were recorded here and are noted as to be sent; those known already are not sent. */
  send(events: readonly LogEvent[]): Promise<void>;
  /**
   * Has records on the lane of rights kept; answers once they are read here as well, so that whoever is let in
   * next is given the keys that are new by then.
   */
  say(records: readonly ClassRecord[], pass?: string): Promise<Saying>;
  /** Asks the server something; null when the line was lost before it answered. */
  ask(make: (k: number) => DeviceMessage): Promise<ServerMessage | null>;
  /** Says something of the moment to whoever is there now; whoever is away misses it. */
  sayLive(value: unknown): Promise<void>;
  /** Says something live to all walls, or to the one of this id, sealed already. */
  sayTo(to: string, body: string): void;
  /** Lets the class begin again on a server that has lost all of it, with a pass of that server. */
  shareAgain(pass: string): void;
  /** Resolves when everything here is with the server, and everything there is here. */
  settled(): Promise<void>;
  close(): void;
}

/** What came of it: kept, or why not; `lost` when the server could not be reached. */
export type Saying = { readonly kept: true } | { readonly why: string };

/**
 * Where it is: `here` alone, `on-its-way`, or `everywhere` her other devices can get it; `closed` with
 * why, when this device is no longer in the class.
 */
export interface FarState {
  readonly where: 'here' | 'on-its-way' | 'everywhere' | 'closed';
  readonly why: string | null;
  /** Whether the server has lost the class, and a school pass is asked for (`shareAgain`). */
  readonly needsPass: boolean;
  /** What the server or this device did not take, and why. */
  readonly aside: ReadonlyMap<string, string>;
  /** How many of the events recorded here are still to be sent. */
  readonly unsent: number;
  /** Whether the server is in reach. */
  readonly isConnected: boolean;
  /** Why what comes cannot be kept on this device; null while it can. */
  readonly trouble: StoreError | null;
  /** Whether the server has no more room for the class. */
  readonly isFull: boolean;
}
