/** How the open class stands with her other devices. */

import { signal } from '@preact/signals';
import type { ClassId } from '../../core/ids.ts';
import type { Rights } from '../../core/sharing/rights.ts';
import type { FarClass, FarState } from '../device/far/far-state.ts';

/** What is known of the sharing of the open class. */
export interface Sharing {
  readonly classId: ClassId;
  /** This device, as the others know it. */
  readonly device: string;
  readonly state: FarState;
  /** Who may do what; null before anything of it was read. */
  readonly rights: Rights | null;
  /** When each device was heard of last, by its id, in milliseconds. */
  readonly seen: Readonly<Record<string, number>>;
  /** The devices that are there now, by id. */
  readonly present: readonly string[];
}

/** Keeps the open class in step until it is stopped. */
export interface InStep {
  /** The class as this window speaks of it to the server, which it does from now on in place of all others. */
  lead(): Promise<FarClass>;
  stop(): void;
}

/** The sharing of the open class; null when it is not shared. */
export const sharing = signal<Sharing | null>(null);

/** What keeps the open class in step; null when it is not shared, or not yet begun. */
export const inStep = signal<InStep | null>(null);
