import type { ClassId } from '../ids.ts';
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
   * kept already is left as it is, and one that was removed is left out. Of a class that was forgotten nothing is kept (`forgotten`). Where a class
   * is shared, what is new and of `here` is noted in the same stroke as still to be sent.
   */
  append(events: readonly LogEvent[], origin?: Origin): Promise<Kept | StoreFailure>;
  /** Every event of a class, each once, in no certain order; none for a class never heard of. */
  eventsOf(classId: ClassId): Promise<EventsRead | StoreFailure>;
  /** Every class that has events, in the order of their ids, and which were forgotten. */
  classes(): Promise<ClassesRead | StoreFailure>;
  /**
   * Deletes a class and every event of it, for good, and remembers that it did: whatever else has events
   * of it, they do not come back. Only a person may ask for this.
   */
  forget(classId: ClassId): Promise<Kept | StoreFailure>;
  /**
   * Removes what these ids stand for and all that was said of it (erased.ts), for good, and remembers that it
   * did: nothing of it is kept again, wherever it comes from. Only a person may ask for this.
   */
  remove(classId: ClassId, ids: readonly string[]): Promise<Kept | StoreFailure>;
  /** Lets a class be kept again that was forgotten. Only a person may ask for this. */
  recall(classId: ClassId): Promise<Kept | StoreFailure>;
  /** Ends the use of it; what was asked for before is still done. */
  close(): Promise<void>;
}

/** Where events come from: from this device, which is meant when it is left out, or from a server. */
export type Origin = 'here' | 'afar';

/** What was read of a class. */
export interface EventsRead {
  readonly events: readonly LogEvent[];
  /** How many records of it could not be read; none when it is left out. */
  readonly damaged?: number;
  /** What was removed for good, by ids (erased.ts); nothing when it is left out. */
  readonly erased?: ReadonlySet<string>;
  /** What is wrong with the store all the same: these events came from elsewhere. */
  readonly trouble?: StoreError;
}

/** What classes there are. */
export interface ClassesRead {
  readonly classes: readonly ClassHead[];
  /** The ids of classes that were forgotten, in their order. */
  readonly forgotten: readonly ClassId[];
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
 * holds it (`busy`); it does not answer (`slow`); the class was forgotten (`forgotten`); what was to be kept
 * is of no kind that can be, or larger than it takes (`unkeepable`); anything else (`broken`).
 */
export interface StoreError {
  readonly code:
    | 'refused'
    | 'full'
    | 'newer'
    | 'busy'
    | 'slow'
    | 'forgotten'
    | 'unkeepable'
    | 'broken';
  /** What it means for her and what to do. */
  readonly message: string;
}

/** A class in a list of classes: enough of its events to know its name without opening it. */
export interface ClassHead {
  readonly classId: ClassId;
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
