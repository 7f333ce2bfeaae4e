import type { Role } from '../../core/sharing/role.ts';

/** What a device may do, in a few words, and in a sentence. */
export const ROLE_SAID: Readonly<Record<Role, { readonly name: string; readonly says: string }>> = {
  owner: {
    name: 'Everything',
    says: 'All that this device can do, letting others in too. For your own second device.',
  },
  teacher: {
    name: 'Teaches too',
    says: 'Runs warm-ups, marks, changes groups and writes notes. Lets nobody in.',
  },
  aide: {
    name: 'Desk, without notes',
    says: 'Turns the cards, says who reads, marks what broke. Notes and checks stay locked for it.',
  },
  specialist: {
    name: 'Reads along',
    says: 'Sees all that you see, and writes nothing.',
  },
  wall: {
    name: 'Wall only',
    says: 'Shows the cards and the sweep. It knows no names, notes nothing, and forgets the warm-up when it is over.',
  },
  school: {
    name: 'Your school’s key',
    says: 'Your school can open this class when nobody else can. It writes nothing.',
  },
};

/** Why something about sharing was not done, and what to do. */
export function refusalSaid(why: string): string {
  return refusals.get(why) ?? 'It did not work this time. Please try again.';
}

const refusals: ReadonlyMap<string, string> = new Map([
  [
    'not-secure',
    'Classes can be shared only where the address begins with https. Ask whoever looks after computers at your school for that address.',
  ],
  [
    'no-storage',
    'This browser does not let Sweepline keep anything just now, so there is nothing to share from it. Use a window that is not private.',
  ],
  ['old-browser', 'This browser is too old to share a class. Use a newer one.'],
  [
    'no-server',
    'No server for sharing answered at this address. Perhaps the network is gone; or Sweepline is served here without one: ask whoever looks after computers at your school.',
  ],
  ['lost', 'The network was lost before the server answered. Please try again.'],
  [
    'pass',
    'That school pass is not known here, or all its classes are used. Look at it again, or ask whoever gave it to you for another.',
  ],
  [
    'spent',
    'That code was used already, or its ten minutes are over. Ask for a new one on the other device.',
  ],
  ['gone', 'This class is shared no more: it was taken back from all devices.'],
  ['removed', 'This device was removed from the class.'],
  ['not-allowed', 'This device may not do that in this class.'],
  ['full', 'The server has no more room for this class. Everything stays on this device.'],
]);

/** Why an event of a shared class was set aside, as a sentence. */
export function asideSaid(why: string): string {
  return asides.get(why) ?? 'could not be read here';
}

const asides: ReadonlyMap<string, string> = new Map([
  ['not-allowed', 'was not for its device to say'],
  ['wrong-lane', 'was sent for others to read than it may be'],
  ['ahead', 'bears a time that has not come yet'],
  ['other-class', 'is of another class'],
  ['wrong-signature', 'was not signed by who it says it is from'],
  ['removed', 'came from a device that was removed'],
  ['no-member', 'came from a device that is not in the class'],
  ['unreadable', 'could not be opened with the keys of this device'],
  ['old-epoch', 'was sealed with keys that are past'],
]);
