import type { ClassId } from '../core/ids.ts';
import {
  type LiveMessage,
  makeMessage,
  type PresenceMessage,
  parseServerMessage,
  type ServerMessage,
} from '../core/sharing/message.ts';
import type { Followers, Line } from './followers.ts';
import type { Limit } from './limits.ts';

/** Passes on between devices what is of the moment. Nothing of it is ever kept. */
export interface Presence {
  /** A device says something to all others who follow the class now; too much of it is dropped. */
  say(line: Line, message: LiveMessage | PresenceMessage): void;
  /** Another instance passes on what was said there. */
  heard(classId: ClassId, text: string): void;
  /** The connection is gone. */
  leave(line: Line): void;
  /** Tells of those who have not said for 25 seconds that they are there. */
  tick(): void;
}

/** A device that has been silent for so long is gone, in milliseconds. */
const SILENT_FOR = 25_000;

/** Passes on what devices say live; `elsewhere` passes it on to the other instances. */
export function createPresence(
  followers: Followers,
  limit: Limit,
  now: () => number,
  elsewhere: (classId: ClassId, text: string) => void,
): Presence {
  const there = new Map<Line, Map<ClassId, number>>();
  return {
    say(line, said) {
      const { c: classId } = said;
      if (!followers.follows(line, classId) || limit.take(line.device) > 0) return;
      // A wall speaks to the devices of the class, never to another wall.
      const isOfWall = said.t === 'live' && followers.isWall(line, classId);
      const message = isOfWall ? { ...said, s: line.device } : said;
      if (message.t === 'here') {
        const classes = there.get(line) ?? new Map<ClassId, number>();
        there.set(line, classes.set(classId, now()));
      }
      pass(classId, makeMessage({ ...message, from: line.device }), line, addressee(message));
    },
    heard(classId, text) {
      followers.tell(classId, text, null, addressee(parseServerMessage(text)));
    },
    leave(line) {
      for (const classId of there.get(line)?.keys() ?? []) depart(line, classId);
      there.delete(line);
    },
    tick() {
      for (const [line, classes] of there) {
        for (const [classId, at] of classes) {
          if (now() - at < SILENT_FOR) continue;
          classes.delete(classId);
          depart(line, classId);
        }
      }
    },
  };

  function pass(classId: ClassId, text: string, except: Line | null, to: string | null): void {
    followers.tell(classId, text, except, to);
    elsewhere(classId, text);
  }

  function depart(line: Line, c: ClassId): void {
    pass(c, makeMessage({ t: 'left', c, from: line.device }), line, null);
  }
}

/** To whom something is said; null for all who follow the class. */
function addressee(message: LiveMessage | PresenceMessage | ServerMessage | null): string | null {
  return message?.t === 'live' ? message.s : null;
}
