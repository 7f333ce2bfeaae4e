import type { ClassId } from '../../../core/ids.ts';
import type { DeviceMessage, ServerMessage } from '../../../core/sharing/message.ts';
import { createPieces, piecesOf } from './live-pieces.ts';
import type { SharedClass } from './shared-class.ts';

/** What devices of a class say of the moment: that they are there, and what they show. Nothing of it is kept. */
export interface LiveTalk {
  /** Says something to whoever is there now. */
  say(value: unknown): Promise<void>;
  /** Says something live to all walls, or to the one of this id, sealed already. */
  sayTo(to: string, body: string): void;
  hear(message: ServerMessage & { readonly t: 'live' | 'here' | 'left' }): Promise<void>;
  /** This device follows the class, and says so from now on. */
  enter(): void;
  /** The line is lost. */
  leave(): void;
}

/** What it needs. */
export interface MomentSpec {
  readonly classId: ClassId;
  /** This device. */
  readonly me: string;
  /** The class as this device reads it now. */
  readonly shared: () => SharedClass;
  /** Sends, while the class is followed. */
  readonly send: (message: DeviceMessage) => void;
  /**
   * Is told what another device says; of one that is gone, null. A device that only looks in, and hears nothing
   * of the moment, does not say that it is there either.
   */
  readonly onLive: ((from: string, value: unknown) => void) | undefined;
  /** Is told what another device says that is not sealed for the class: a wall does. */
  readonly onSealed: ((from: string, body: string) => void) | undefined;
}

/** A device says so often that it is there, in milliseconds; one that has not for 25 seconds is gone. */
const HERE_EVERY = 10_000;

/** Nobody is met yet. */
export function createMoment({
  classId,
  me,
  shared,
  send,
  onLive,
  onSealed,
}: MomentSpec): LiveTalk {
  const pieces = createPieces();
  const met = new Set<string>();
  let count = 0;
  let presence: ReturnType<typeof setInterval> | undefined;
  const sayTo = (to: string, body: string) =>
    send({ t: 'live', c: classId, s: to, n: ++count, body });
  return {
    async say(value) {
      for (const bytes of piecesOf(value)) {
        const body = await shared().sealLive(bytes);
        if (body !== null) sayTo(me, body);
      }
    },
    sayTo,
    async hear(message) {
      if (message.t === 'left') {
        met.delete(message.from);
        onLive?.(message.from, null);
      } else if (message.t === 'here') {
        // Whoever has just come learns of this device at once, and not ten seconds later.
        if (!met.has(message.from)) void sayHere();
        met.add(message.from);
        onLive?.(message.from, 'here');
      } else {
        const bytes = await shared().openLive(message.body);
        if (bytes === null) onSealed?.(message.from, message.body);
        const value = bytes && pieces.take(message.from, bytes);
        if (value !== null && value !== undefined) onLive?.(message.from, value);
      }
    },
    enter() {
      if (!onLive) return;
      void sayHere();
      clearInterval(presence);
      presence = setInterval(() => void sayHere(), HERE_EVERY);
    },
    leave() {
      clearInterval(presence);
      met.clear();
    },
  };

  async function sayHere(): Promise<void> {
    const body = await shared().sealLive(new Uint8Array(1));
    if (body !== null) send({ t: 'here', c: classId, body });
  }
}
