import { type DeviceMessage, makeMessage } from '../core/sharing/message.ts';
import type { ClassStore } from './class-store.ts';

/** A connection that follows classes. */
export interface Line {
  readonly device: string;
  /** Sends a message. */
  send(text: string): void;
  /** How many bytes were sent and are not taken yet. */
  pressure(): number;
  /** Ends the connection. */
  end(): void;
}

/** Who follows which class. */
export interface Followers {
  follow(line: Line, from: DeviceMessage & { readonly t: 'follow' }): Promise<void>;
  /** The connection is gone. */
  leave(line: Line): void;
  /** These classes have grown. */
  grown(classIds: readonly string[]): void;
  /** Sends on where a connection had taken too little, and looks whether another server has kept more. */
  tick(): Promise<void>;
  /** Resolves when the class has more than `after`, or after so many milliseconds. */
  wait(classId: string, after: number, ms: number): Promise<void>;
}

/** So much may be on its way to one device; then it has to take it first. */
const MOST_PRESSURE = 512 * 1024;

interface Place {
  cursor: number;
  isBusy: boolean;
  /** Whether it was told to go on while it was busy. */
  again: boolean;
}

/**
 * Sends every device what it has not yet of the classes that it follows. A follower is a place in the
 * database and no queue in memory, so that a thousand that take nothing cost nothing. Whoever was removed
 * is cut off with the next record of the class, which is the one that removes it.
 */
export function createFollowers(store: ClassStore): Followers {
  const byClass = new Map<string, Map<Line, Place>>();
  const heads = new Map<string, number>();
  const waiting = new Map<string, Set<() => void>>();
  return {
    async follow(line, { c: classId, after, trace }) {
      const read = await store.read(classId, after);
      const why = await reasonAgainst(line, classId, read !== null);
      if (read === null || why) {
        line.send(makeMessage({ t: 'closed', c: classId, why: why ?? 'no-class' }));
        return;
      }
      const { head } = read;
      const knows = (await store.traceAt(classId, after)) === trace;
      line.send(makeMessage({ t: 'following', c: classId, head, knows }));
      // What the server does not know leads nowhere: the device begins anew.
      if (!knows) return;
      const lines = byClass.get(classId) ?? new Map<Line, Place>();
      byClass.set(classId, lines);
      const place: Place = { cursor: after, isBusy: false, again: false };
      lines.set(line, place);
      heads.set(classId, Math.max(head, heads.get(classId) ?? 0));
      await pump(line, classId, place);
    },
    leave(line) {
      for (const [classId, lines] of byClass) {
        lines.delete(line);
        if (lines.size === 0) {
          byClass.delete(classId);
          heads.delete(classId);
        }
      }
    },
    grown(classIds) {
      for (const classId of classIds) {
        for (const wake of waiting.get(classId) ?? []) wake();
        for (const [line, place] of byClass.get(classId) ?? []) void pump(line, classId, place);
      }
    },
    async tick() {
      const asked = [...new Set([...byClass.keys(), ...waiting.keys()])];
      const now = await store.heads(asked);
      for (const [classId, lines] of byClass) {
        const head = now.get(classId) ?? 0;
        for (const [line, place] of lines) {
          if (place.cursor < head) void pump(line, classId, place);
        }
      }
      for (const [classId, wakes] of waiting) {
        if ((now.get(classId) ?? 0) > (heads.get(classId) ?? 0)) for (const wake of wakes) wake();
      }
    },
    async wait(classId, after, ms) {
      const wakes = waiting.get(classId) ?? new Set<() => void>();
      waiting.set(classId, wakes);
      heads.set(classId, after);
      await new Promise<void>((resolve) => {
        const wake = () => {
          clearTimeout(timer);
          wakes.delete(wake);
          if (wakes.size === 0) waiting.delete(classId);
          resolve();
        };
        const timer = setTimeout(wake, ms);
        wakes.add(wake);
      });
    },
  };

  async function reasonAgainst(
    { device }: Line,
    classId: string,
    isThere: boolean,
  ): Promise<string | null> {
    if (!isThere) return 'no-class';
    const member = (await store.rightsOf(classId))?.members.get(device);
    if (!member) return 'no-member';
    return member.removed ? 'removed' : null;
  }

  /** Sends on until there is nothing more, or the device has to take first what was sent. */
  async function pump(line: Line, classId: string, place: Place): Promise<void> {
    if (place.isBusy) {
      place.again = true;
      return;
    }
    place.isBusy = true;
    try {
      do {
        place.again = false;
        while (line.pressure() < MOST_PRESSURE && byClass.get(classId)?.get(line) === place) {
          const why = await reasonAgainst(line, classId, true);
          if (why) {
            line.send(makeMessage({ t: 'closed', c: classId, why }));
            byClass.get(classId)?.delete(line);
            line.end();
            return;
          }
          const from = place.cursor;
          const read = await store.read(classId, from);
          if (!read || read.records.length === 0) break;
          const to = from + read.records.length;
          const { head, records } = read;
          line.send(makeMessage({ t: 'records', c: classId, from, to, head, records }));
          place.cursor = to;
          if (to >= head) break;
        }
      } while (place.again);
    } catch {
      // The database cannot be reached; the next tick asks again.
    } finally {
      place.isBusy = false;
    }
  }
}
