import type { ClassId } from '../core/ids.ts';
import { type LiveMessage, makeMessage, type PresenceMessage } from '../core/sharing/message.ts';
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
    say(line, message) {
      const { c: classId } = message;
      if (!followers.follows(line, classId) || limit.take(line.device) > 0) return;
      if (message.t === 'here') {
        const classes = there.get(line) ?? new Map<ClassId, number>();
        there.set(line, classes.set(classId, now()));
      }
      pass(classId, makeMessage({ ...message, from: line.device }), line);
    },
    heard: (classId, text) => followers.tell(classId, text, null),
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

  function pass(classId: ClassId, text: string, except: Line | null): void {
    followers.tell(classId, text, except);
    elsewhere(classId, text);
  }

  function depart(line: Line, c: ClassId): void {
    pass(c, makeMessage({ t: 'left', c, from: line.device }), line);
  }
}
