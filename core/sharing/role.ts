import type { EventKind } from '../log/event.ts';

/**
 * What a device may do in a class, as its owner chose it. A school is a key that no device has: its private
 * half lies with the school, for the day on which nobody else can open the class. All members see that it
 * can; it reads all and writes nothing. A wall is a screen that shows one warm-up: it reads and writes nothing of the
 * class, and what it is told live is sealed with a key of that warm-up alone.
 */
export const ROLES = ['owner', 'teacher', 'aide', 'specialist', 'wall', 'school'] as const;
export type Role = (typeof ROLES)[number];

/**
 * The two lanes of what is sealed, each with a key of its own: what is needed to run a warm-up (the
 * children, their groups, drills and marks), and what is private (notes, her lines, checks).
 */
export const LANES = ['run', 'private'] as const;
export type Lane = (typeof LANES)[number];

/** The lane on which an event of this kind travels; of a newer version's kinds, the one to run by. */
export function laneOf(kind: string): Lane {
  return privateKinds.has(kind) ? 'private' : 'run';
}

/** Whether a role reads a lane. */
export function mayRead(role: Role, lane: Lane): boolean {
  return role !== 'wall' && (lane === 'run' || role !== 'aide');
}

/** Whether a role may send anything on a lane; what it may say there is asked by `maySay`. */
export function mayWrite(role: Role, lane: Lane): boolean {
  return role !== 'specialist' && role !== 'school' && mayRead(role, lane);
}

/** Whether a role leads warm-ups and turns the cards of others; who only reads along looks on. */
export function mayLead(role: Role): boolean {
  return role === 'owner' || role === 'teacher' || role === 'aide';
}

/**
 * Whether a role may say an event of this kind. An aide runs a warm-up, marks and says who is away, and takes back or dates
 * what she said herself (admit.ts asks whose it was); of kinds that only a newer version knows, nothing.
 */
export function maySay(role: Role, kind: string): boolean {
  if (role === 'owner' || role === 'teacher') return true;
  return role === 'aide' && aideKinds.has(kind);
}

const privateKinds: ReadonlySet<string> = new Set<EventKind>([
  'noted',
  'wrote',
  'check-begun',
  'check-marked',
  'check-ended',
]);

const aideKinds: ReadonlySet<string> = new Set<EventKind>([
  'begun',
  'replanned',
  'shown',
  'called',
  'marked',
  'amended',
  'corrected',
  'ended',
  'away',
  'undone',
  'dated',
]);
