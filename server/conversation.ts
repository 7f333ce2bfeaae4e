import type { ClassId } from '../core/ids.ts';
import { type DeviceMessage, makeMessage } from '../core/sharing/message.ts';
import type { Followers, Line } from './followers.ts';
import type { Presence } from './presence.ts';
import { answer, type SessionDesk } from './session.ts';

/** What a proven device and the server say to each other, whichever way it goes. */
export interface Conversation {
  /** Takes what the device says next. Rejects when the database cannot be reached. */
  take(message: DeviceMessage): Promise<void>;
  /** The device is gone. */
  end(): void;
}

/** What all conversations have in common. */
export interface House {
  readonly desk: SessionDesk;
  readonly followers: Followers;
  readonly presence: Presence;
}

/** So many classes can be followed on one connection. */
const MOST_CLASSES = 50;

/** Begins to speak with the device at the other end of a line. */
export function converse({ desk, followers, presence }: House, line: Line): Conversation {
  const classes = new Set<ClassId>();
  line.send(makeMessage({ t: 'welcome' }));
  return {
    async take(message) {
      if (message.t === 'proof') return line.end();
      if (message.t === 'live' || message.t === 'here') return presence.say(line, message);
      if (message.t !== 'follow') {
        return line.send(makeMessage(await answer(desk, line.device, message)));
      }
      classes.add(message.c);
      if (classes.size > MOST_CLASSES) return line.end();
      await followers.follow(line, message);
    },
    end() {
      presence.leave(line);
      followers.leave(line);
    },
  };
}
