import type { LogEvent } from './event.ts';

/**
 * The port to where events are kept. Every adapter passes one contract suite
 * (test/event-store-contract.ts). What fails is told by value and never
 * thrown; what was kept before is not changed by a failure.
 */
export interface EventStore {
  /**
   * Adds events, all of them or none. Resolves once they are kept for good: from
   * then on the end of the program takes none of them away. An event that is
   * kept already is left as it is.
   */
  append(events: readonly LogEvent[]): Promise<Kept | StoreFailure>;
  /** Every event of a class, each once, in no certain order; none for a class never heard of. */
  eventsOf(classId: string): Promise<{ readonly events: readonly LogEvent[] } | StoreFailure>;
  /** Every class that has events, in the order of their ids. */
  classes(): Promise<{ readonly classes: readonly ClassHead[] } | StoreFailure>;
  /** Deletes a class and every event of it, for good. Only a person may ask for this. */
  forget(classId: string): Promise<Kept | StoreFailure>;
  /** Ends the use of it; what was asked for before is still done. */
  close(): Promise<void>;
}

/** It is done, and kept. */
export interface Kept {
  readonly kept: true;
}

/** It is not done. */
export interface StoreFailure {
  readonly error: StoreError;
}

/**
 * Why: the browser allows no storage (`refused`); there is no more room
 * (`full`); what is kept was written by a newer version (`newer`); another window
 * holds it (`busy`); anything else (`broken`).
 */
export interface StoreError {
  readonly code: 'refused' | 'full' | 'newer' | 'busy' | 'broken';
  /** What it means for her and what to do. */
  readonly message: string;
}

/** A class in a list of classes: enough of its events to know its name without opening it. */
export interface ClassHead {
  readonly classId: string;
  /** The events that name the class or archive it, every undoing and dating: `replay` gives those fields. */
  readonly events: readonly LogEvent[];
}

/** Whether an event belongs in a `ClassHead`. */
export function isOfHead({ kind, body }: LogEvent): boolean {
  return (
    kind === 'undone' ||
    kind === 'dated' ||
    (kind === 'set' && (body as { readonly of?: unknown }).of === 'class')
  );
}
