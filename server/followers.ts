import type { ClassId } from '../core/ids.ts';
import { type DeviceMessage, makeMessage, TO_WALLS } from '../core/sharing/message.ts';
import { type ClassRecord, RECORD_LANES } from '../core/sharing/record.ts';
import { isIn, type Member } from '../core/sharing/rights.ts';
import { mayRead, type Role } from '../core/sharing/role.ts';
import type { ClassStore } from './class-store.ts';

/** A connection that follows classes. */
export interface Line {
  readonly device: string;
  /** Sends a message; `onTaken` is told when it is no longer on its way. */
  send(text: string, onTaken?: () => void): void;
  /** How many bytes were sent and are not taken yet. */
  pressure(): number;
  /** Ends the connection. */
  end(): void;
}

/** Who follows which class. */
export interface Followers {
  follow(line: Line, from: DeviceMessage & { readonly t: 'follow' }): Promise<void>;
  /** Whether a connection follows a class. */
  follows(line: Line, classId: ClassId): boolean;
  /** Whether a connection follows a class as a wall, which is sent no records. */
  isWall(line: Line, classId: ClassId): boolean;
  /**
   * Says something to all who follow a class and take what is sent, but not to `except`; `to` as a live
   * message says it, null for all.
   */
  tell(classId: ClassId, text: string, except: Line | null, to: string | null): void;
  /** The connection is gone. */
  leave(line: Line): void;
  /** These classes have grown. */
  grown(classIds: readonly ClassId[]): void;
  /** Looks whether another server has kept more. */
  tick(): Promise<void>;
}

/** So much may be on its way to one device; then it has to take it first. */
const MOST_PRESSURE = 512 * 1024;

interface Place {
  readonly isWall: boolean;
  cursor: number;
  isBusy: boolean;
  /** Whether it is held up until the device has taken what was sent. */
  isHeld: boolean;
  /** Whether it was told to go on while it was busy. */
  again: boolean;
}

/**
 * Sends every device what it has not yet of the classes that it follows. A follower is a place in the
 * database and no queue in memory, so that a thousand that take nothing cost nothing. Whoever was removed
 * is cut off with the next record of the class, which is the one that removes it. Nobody is sent what the role
 * does not read: to an aide what is private is a run of places with nothing in it. A wall is sent no record
 * at all, and not told how many there are.
 */
export function createFollowers(store: ClassStore, now: () => number): Followers {
  const byClass = new Map<ClassId, Map<Line, Place>>();
  return {
    async follow(line, { c: classId, after, trace }) {
      const read = await store.read(classId, after);
      const stands = read === null ? 'no-class' : await standingOf(line, classId);
      if (read === null || typeof stands === 'string') {
        line.send(makeMessage({ t: 'closed', c: classId, why: `${stands}` }));
        return;
      }
      const isWall = stands.role === 'wall';
      const head = isWall ? 0 : read.head;
      const knows = isWall || (await store.knows(classId, after, trace));
      line.send(makeMessage({ t: 'following', c: classId, head, knows }));
      // What the server does not know leads nowhere: the device begins again.
      if (!knows) return;
      const lines = byClass.get(classId) ?? new Map<Line, Place>();
      byClass.set(classId, lines);
      const cursor = isWall ? read.head : after;
      const place: Place = { isWall, cursor, isBusy: false, isHeld: false, again: false };
      lines.set(line, place);
      await pump(line, classId, place);
    },
    follows: (line, classId) => byClass.get(classId)?.has(line) === true,
    isWall: (line, classId) => byClass.get(classId)?.get(line)?.isWall === true,
    tell(classId, text, except, to) {
      for (const [line, { isWall }] of byClass.get(classId) ?? []) {
        const isMeant =
          to === null || (isWall ? to === TO_WALLS || to === line.device : to !== TO_WALLS);
        if (isMeant && line !== except && line.pressure() < MOST_PRESSURE) line.send(text);
      }
    },
    leave(line) {
      for (const [classId, lines] of byClass) {
        lines.delete(line);
        if (lines.size === 0) byClass.delete(classId);
      }
    },
    grown(classIds) {
      for (const classId of classIds) {
        for (const [line, place] of byClass.get(classId) ?? []) void pump(line, classId, place);
      }
    },
    async tick() {
      const heads = await store.heads([...byClass.keys()]);
      for (const [classId, lines] of byClass) {
        const head = heads.get(classId) ?? 0;
        for (const [line, place] of lines) {
          if (place.cursor < head) void pump(line, classId, place);
        }
      }
    },
  };

  /** As whom a device is in a class; or why it is not. */
  async function standingOf({ device }: Line, classId: ClassId): Promise<Member | string> {
    const member = (await store.rightsOf(classId))?.members.get(device);
    if (!member) return 'no-member';
    return isIn(member, now()) ? member : 'removed';
  }

  /** Sends on until there is nothing more, or the device has to take first what was sent. */
  async function pump(line: Line, classId: ClassId, place: Place): Promise<void> {
    if (place.isBusy) {
      place.again = true;
      return;
    }
    place.isBusy = true;
    try {
      do {
        place.again = false;
        while (byClass.get(classId)?.get(line) === place) {
          place.isHeld = line.pressure() >= MOST_PRESSURE;
          if (place.isHeld) return;
          const stands = await standingOf(line, classId);
          if (typeof stands === 'string') {
            line.send(makeMessage({ t: 'closed', c: classId, why: stands }));
            byClass.get(classId)?.delete(line);
            line.end();
            return;
          }
          const from = place.cursor;
          const read = await store.read(classId, from, lanesFor(stands.role));
          if (!read || read.records.length === 0) break;
          const { head, to, records } = read;
          if (place.isWall) {
            place.cursor = head;
            break;
          }
          line.send(makeMessage({ t: 'records', c: classId, from, to, head, records }), () => {
            if (place.isHeld) void pump(line, classId, place);
          });
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

/** What is sent to a role: who may do what, and the lanes that it reads. */
function lanesFor(role: Role): readonly ClassRecord['lane'][] {
  return RECORD_LANES.filter((lane) => lane === 'rights' || mayRead(role, lane));
}
