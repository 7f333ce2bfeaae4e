/** What a grown-up does about the sharing of the open class; each says in the end how it went. */
import { eventsIn } from '../../core/log/class-events.ts';
import { NOTHING } from '../../core/sharing/follower.ts';
import type { ClassRecord } from '../../core/sharing/record.ts';
import { rightsAfter } from '../../core/sharing/rights.ts';
import type { Role } from '../../core/sharing/role.ts';
import type { SchoolKey } from '../../core/sharing/school-key.ts';
import { makeShortCode, parseShortCode, parseTyped, SHORT } from '../../core/sharing/typed-code.ts';
import { makeKeys, makeSecret } from '../device/far/cipher.ts';
import { type FarLine, openLine } from '../device/far/far-line.ts';
import type { FarClass, Saying } from '../device/far/far-state.ts';
import {
  invitationId,
  makeInviteSecret,
  openInvitation,
  secretOfCode,
} from '../device/far/invitation.ts';
import { type OwnDevice, ownDevice } from '../device/far/own-device.ts';
import { deviceId, newId } from '../device/log/ids.ts';
import { beWall } from './be-wall.ts';
import { connect } from './in-step.ts';
import {
  classState,
  openClass,
  openLastClass,
  recordForGood,
  reopenClass,
  store,
} from './open-class.ts';
import { inStep } from './sharing.ts';

/** How an act went; `why` is a code that `refusalSaid` puts into words. */
export type Done = { readonly done: true } | { readonly why: string };

/** An invitation that was just made. */
export interface Invited {
  readonly id: string;
  /** What stands for the secret when it is typed; empty where the other device made the secret. */
  readonly code: string;
  /** What the link has; with it whoever has it comes in, once. */
  readonly secret: string;
  /** Until when it is good, by this device's clock in milliseconds. */
  readonly until: number;
}

/** An invitation to come in now is good for so long, in milliseconds. */
const TEN_MINUTES = 10 * 60 * 1000;

/** A recovery sheet is good for so long, in milliseconds: longer than anyone teaches. */
const FOR_GOOD = 50 * 365 * 24 * 60 * 60 * 1000;

/** So long an act waits for the server, in milliseconds. */
const PATIENCE = 15_000;

/** Whether this browser has the locks that sharing needs; else why not. */
function cannotSeal(): string | null {
  return isSecureContext && 'subtle' in crypto ? null : 'not-secure';
}

/** Whether this browser can share a class; else why not. */
function cannotShare(): string | null {
  if (cannotSeal() !== null) return cannotSeal();
  if (store.inMemory.peek() || store.trouble.peek() !== null) return 'no-storage';
  return 'locks' in navigator ? null : 'old-browser';
}

/** Shares the open class from this device, which a server takes with a school pass. */
export async function shareClass(pass: string, deviceName: string): Promise<Done> {
  const why = cannotShare();
  if (why !== null) return { why };
  const classId = classState.peek().id;
  const by = deviceId();
  if (!(await nameDevice(by, deviceName))) return { why: 'no-storage' };
  const before = await store.shared.of(classId);
  if (before === null) {
    const keys = await makeKeys(false);
    const { id: founder } = await ownDevice(keys, by);
    const nobody = { invitation: null, followed: NOTHING, rights: [], seen: {}, told: null };
    const events = eventsIn(classState.peek()).map(({ id }) => id);
    await store.shared.begin({ classId, by, keys, founder, ...nobody }, events);
    await reopenClass();
  }
  const far = await farClass();
  const said = far
    ? await sayAtLast(far, async () => [await far.shared().found()], pass)
    : { why: 'lost' };
  if ('kept' in said) return { done: true };
  await store.shared.end(classId);
  await reopenClass();
  return said;
}

/** Lets a device in, once; whoever has the code has ten minutes to come. */
export async function invite(role: Role): Promise<Invited | { readonly why: string }> {
  const code = makeShortCode(makeSecret(SHORT));
  const secret = await secretOfCode(parseShortCode(code) ?? '');
  const made = await inviteFor(role, TEN_MINUTES, secret);
  return 'why' in made ? made : { ...made, code };
}

/** Lets a device in that shows a secret of its own and waits (`waitToBeLetIn`). */
export function admit(role: Role, secret: string): Promise<Invited | { readonly why: string }> {
  return inviteFor(role, TEN_MINUTES, secret);
}

/** What is printed to get the class back when every device is lost. */
export function makeRecovery(): Promise<Invited | { readonly why: string }> {
  return inviteFor('owner', FOR_GOOD, makeInviteSecret());
}

async function inviteFor(
  role: Role,
  milliseconds: number,
  secret: string,
): Promise<Invited | { readonly why: string }> {
  const far = await farClass();
  if (far === null) return { why: 'lost' };
  if (!(await connected(far))) return { why: 'lost' };
  const until = Date.now() + milliseconds;
  const epochThen = far.shared().rights()?.epoch;
  const made = await far.shared().invite(role, far.now() + milliseconds, secret);
  const { record, id, box } = made;
  const said = await far.say([record]);
  if ('why' in said) {
    // Another owner removed a device at that moment: with the keys that are new by then it is made again.
    const isNew = said.why === 'old-epoch' && (await hasNewEpoch(far, epochThen));
    return isNew ? inviteFor(role, milliseconds, secret) : said;
  }
  const c = classState.peek().id;
  const answer = await far.ask((k) => ({ t: 'deposit', k, c, invite: id, box }));
  return answer?.t === 'deposited' ? { id, code: '', secret, until } : { why: 'lost' };
}

/** Lets the school's key in, by which the school can open the class; `id` is that of its signing key. */
export async function letSchoolIn(key: SchoolKey, id: string): Promise<Done> {
  const far = await farClass();
  if (far === null) return { why: 'lost' };
  const { sign, box } = key;
  const school = { id, sign, box, by: id };
  return doneOf(await sayAtLast(far, async () => [await far.shared().letIn(school, 'school')]));
}

/** What this device shows to be let in by one that is in a class: a short code, and its secret. */
export async function makeKnock(): Promise<{ readonly code: string; readonly secret: string }> {
  const code = makeShortCode(makeSecret(SHORT));
  return { code, secret: await secretOfCode(parseShortCode(code) ?? '') };
}

/** Comes in as soon as a device of a class has let this one in by its secret; `isOver` ends the wait. */
export async function waitToBeLetIn(secret: string, isOver: () => boolean): Promise<Done> {
  for (;;) {
    const done = await join(secret);
    if ('done' in done || done.why !== 'spent' || isOver()) return done;
    await new Promise((resolve) => setTimeout(resolve, 2000));
  }
}

/** The secret that was typed or pasted: of a short code, a recovery sheet or an address; null for none. */
export async function secretTyped(text: string): Promise<string | null> {
  const short = parseShortCode(text);
  if (short !== null) return secretOfCode(short);
  return parseTyped(text) ?? /#\/(?:join|share)\?([\w-]{22})\s*$/.exec(text)?.[1] ?? null;
}

/** Takes an invitation back that was not used, or removes a device: it hears and says nothing more. */
export async function remove(id: string): Promise<Done> {
  const far = await farClass();
  if (far === null) return { why: 'lost' };
  return doneOf(await sayAtLast(far, () => far.shared().remove(id, far.now())));
}

/** Erases what these ids stand for, on every device and at the server, for good. */
export async function purge(ids: readonly string[]): Promise<Done> {
  const far = await farClass();
  if (far === null) return { why: 'lost' };
  return doneOf(await sayAtLast(far, async () => [await far.shared().purge(ids)]));
}

/** Ends the sharing for all: the class leaves every other device and the server, and stays on this one. */
export async function stopSharing(): Promise<Done> {
  const far = await farClass();
  if (far === null) return { why: 'lost' };
  const said = await sayAtLast(far, async () => [await far.shared().deleted()]);
  if ('why' in said) return said;
  await leave();
  return { done: true };
}

/** This device goes on alone, with what it has; the others are told nothing. */
export async function leave(): Promise<void> {
  await store.shared.end(classState.peek().id);
  await reopenClass();
}

/** Comes into a class by an invitation's secret, and opens it; as a wall, shows its warm-up. */
export async function join(secret: string): Promise<Done> {
  const unsafe = cannotSeal();
  if (unsafe !== null) return { why: unsafe };
  const keys = await makeKeys(false);
  const by = newId();
  const own = await ownDevice(keys, by);
  const box = await fetchBox(own, await invitationId(secret));
  if (typeof box !== 'string') return box;
  const opened = await openInvitation(secret, box);
  if (opened === null) return { why: 'spent' };
  if (opened.isWall) return beWall(opened, own);
  const why = cannotShare();
  if (why !== null) return { why };
  const { classId, founder } = opened;
  const before = await store.shared.of(classId);
  if (before !== null) {
    const me = rightsAfter(null, before.rights)?.members.get(
      (await ownDevice(before.keys, before.by)).id,
    );
    // Who was removed comes back as a new device, with what it could not send before.
    if (me?.removed) await store.shared.end(classId);
    else {
      await openClass(classId);
      return { done: true };
    }
  }
  await store.recall(classId);
  const read = await store.eventsOf(classId);
  const here = 'events' in read ? read.events.map(({ id }) => id) : [];
  const invitation = { id: opened.id, keys: opened.keys };
  const fresh = { followed: NOTHING, rights: [], seen: {}, told: null };
  await store.shared.begin({ classId, by, keys, founder, invitation, ...fresh }, here);
  await openClass(classId);
  const far = await farClass();
  const said = far
    ? await sayAtLast(far, async () => [await far.shared().comeIn(opened)])
    : { why: 'lost' };
  if ('kept' in said) {
    if (far) await within(far.settled(), PATIENCE);
    return { done: true };
  }
  await store.shared.end(classId);
  await openLastClass();
  return said;
}

/** What a device is called by all who are in the class; `by` is what its events say. */
export function nameDevice(by: string, name: string): Promise<boolean> {
  return recordForGood({ kind: 'set', body: { of: 'device', id: by, field: 'name', value: name } });
}

/** What was left for an invitation, or why it is not to be had. */
async function fetchBox(own: OwnDevice, id: string): Promise<string | { readonly why: string }> {
  // Where no WebSocket gets through, the next try goes by plain requests.
  for (let tries = 0; tries < 3; tries++) {
    const answer = await fetchOnce(own, id);
    if (answer !== null) return answer;
  }
  return { why: 'no-server' };
}

/** One try: null when the server was not reached, or not for long enough. */
function fetchOnce(own: OwnDevice, id: string): Promise<string | { readonly why: string } | null> {
  return new Promise((resolve) => {
    const late = setTimeout(() => end(null), PATIENCE);
    let line: FarLine | null = null;
    const end = (outcome: string | { readonly why: string } | null) => {
      clearTimeout(late);
      resolve(outcome);
      line?.close();
    };
    const ask = () => line?.send({ t: 'fetch', k: 1, invite: id });
    openLine(connect(), own, Date.now, {
      onMessage(message) {
        if (message.t === 'fetched') end(message.box ?? { why: 'spent' });
        else if (message.t === 'later') setTimeout(ask, message.ms);
      },
      onEnd: () => end(null),
    }).then(
      (opened) => {
        line = opened;
        ask();
      },
      () => end(null),
    );
  });
}

/** The open class as this window speaks of it; null when what speaks did not arrive, or another window does. */
async function farClass(): Promise<FarClass | null> {
  for (let waited = 0; waited < PATIENCE; waited += 50) {
    const lead = await inStep
      .peek()
      ?.lead()
      .catch(() => null);
    if (lead) return lead;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  return null;
}

/** Says something as soon as the server is in reach. */
async function sayAtLast(
  far: FarClass,
  records: () => Promise<readonly ClassRecord[]>,
  pass?: string,
): Promise<Saying> {
  if (!(await connected(far))) return { why: 'no-server' };
  return far.say(await records(), pass);
}

/** Whether the server comes into reach in good time. */
function connected(far: FarClass): Promise<boolean> {
  return comes(() => far.state().isConnected);
}

/** Whether another epoch than this begins in good time. */
function hasNewEpoch(far: FarClass, before: number | undefined): Promise<boolean> {
  return comes(() => far.shared().rights()?.epoch !== before);
}

async function comes(isThere: () => boolean): Promise<boolean> {
  for (let waited = 0; !isThere(); waited += 50) {
    if (waited > PATIENCE) return false;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  return true;
}

async function within(work: Promise<unknown>, milliseconds: number): Promise<void> {
  await Promise.race([work, new Promise((resolve) => setTimeout(resolve, milliseconds))]);
}

function doneOf(said: Saying): Done {
  return 'kept' in said ? { done: true } : said;
}
