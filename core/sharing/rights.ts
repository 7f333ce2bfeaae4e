import type { ClassId } from '../ids.ts';
import type { ClassRecord, KeptRecord } from './record.ts';
import { signedText } from './record.ts';
import { type DeviceKeys, parseRightsSaid, type RightsSaid } from './rights-said.ts';
import { mayRead, mayWrite, type Role } from './role.ts';

/** Who may do what in a class, after all that was said of it so far. */
export interface Rights {
  readonly epoch: number;
  /** By id, as they came in; those that were removed are still named. */
  readonly members: ReadonlyMap<string, Member>;
  /** By id. */
  readonly invitations: ReadonlyMap<string, Invitation>;
  /** What was erased for good, by ids (core/log/erased.ts). */
  readonly erased: ReadonlySet<string>;
  /** Whether the class was deleted. */
  readonly gone: boolean;
}

/** A device of a class. */
export interface Member extends DeviceKeys {
  readonly id: string;
  readonly role: Role;
  /** When it came in, by the server's clock. */
  readonly since: number;
  readonly removed: boolean;
}

/** An invitation of a class. */
export interface Invitation {
  readonly id: string;
  readonly sign: string;
  readonly box: string;
  readonly role: Role;
  readonly until: number;
  /** Whether it was used, or taken back. */
  readonly spent: boolean;
}

/** Why a record does not count. */
export type Refusal =
  | 'not-a-record'
  | 'no-class'
  | 'no-member'
  | 'removed'
  | 'not-allowed'
  | 'old-epoch'
  | 'wrong-signature'
  | 'spent'
  | 'gone';

/** How signatures and ids are checked; the server and the devices each bring their own. */
export interface Checking {
  verify(key: string, text: string, signature: string): Promise<boolean> | boolean;
  /** The id of the device that signs with this key. */
  deviceIdOf(key: string): Promise<string> | string;
}

/**
 * Judges one record after all before it, as the server does before it keeps it and every device again when
 * it reads it: gives the rights as they are after it, or why it does not count. `rights` is null before a
 * class is shared. What is sealed in it is judged by `admit`.
 *
 * Problem: a server must not be able to give anyone a right, and yet must hold off who has none. Method:
 * rights are records in the same order as all others, signed by who had the right to give them, so that
 * whoever reads the class in order comes to the same. Alternative: a list of members at the server, which
 * devices would have to believe.
 */
export async function judge(
  classId: ClassId,
  rights: Rights | null,
  record: ClassRecord,
  at: number,
  checking: Checking,
): Promise<{ readonly rights: Rights } | { readonly refused: Refusal }> {
  if (rights?.gone) return { refused: 'gone' };
  if (record.lane !== 'rights') {
    const refused = rights ? refusalOf(rights, record) : 'no-class';
    if (refused) return { refused };
    const signer = rights?.members.get(record.writer)?.sign ?? '';
    const isSigned = await checking.verify(signer, signedText(classId, record), record.signature);
    return isSigned && rights ? { rights } : { refused: 'wrong-signature' };
  }
  const said = parseRightsSaid(record.body);
  if (said === null) return { refused: 'not-a-record' };
  const outcome = after(rights, record.writer, said, at);
  if ('refused' in outcome) return outcome;
  const came = 'device' in said && typeof said.device !== 'string' ? said.device : null;
  const cameAs = said.says === 'let-in' ? said.id : record.writer;
  if (came && (await checking.deviceIdOf(came.sign)) !== cameAs) {
    return { refused: 'wrong-signature' };
  }
  const text = signedText(classId, record);
  const isSigned = await checking.verify(outcome.signer, text, record.signature);
  return isSigned ? { rights: outcome.rights } : { refused: 'wrong-signature' };
}

/** The rights after records that were judged when they were kept. */
export function rightsAfter(rights: Rights | null, records: readonly KeptRecord[]): Rights | null {
  let now = rights;
  for (const { lane, body, writer, at } of records) {
    const said = lane === 'rights' ? parseRightsSaid(body) : null;
    const outcome = said && after(now, writer, said, at);
    if (outcome && 'rights' in outcome) now = outcome.rights;
  }
  return now;
}

/** Members that were not removed and have its keys, which walls have not. */
export function staying({ members }: Rights): readonly Member[] {
  return [...members.values()].filter(({ removed, role }) => !removed && mayRead(role, 'run'));
}

/** A wall is in the class for so long, in milliseconds: one warm-up, with all that comes between. */
export const WALL_FOR = 3 * 60 * 60 * 1000;

/** Whether a device is in the class at a time, by the server's clock in milliseconds. */
export function isIn({ removed, role, since }: Member, at: number): boolean {
  return !removed && (role !== 'wall' || at < since + WALL_FOR);
}

/** Invitations that can still be used. */
export function open({ invitations }: Rights, at: number): readonly Invitation[] {
  return [...invitations.values()].filter(({ spent, until }) => !spent && until > at);
}

function refusalOf(rights: Rights, { writer, lane, epoch }: ClassRecord): Refusal | null {
  const member = rights.members.get(writer);
  if (!member) return 'no-member';
  if (member.removed) return 'removed';
  if (lane === 'rights' || !mayWrite(member.role, lane)) return 'not-allowed';
  return epoch === rights.epoch ? null : 'old-epoch';
}

/** The rights after something was said, and by whose key it must be signed. */
function after(
  rights: Rights | null,
  writer: string,
  said: RightsSaid,
  at: number,
): { readonly rights: Rights; readonly signer: string } | { readonly refused: Refusal } {
  if (said.says === 'found') {
    if (rights !== null) return { refused: 'not-allowed' };
    const owner: Member = {
      ...said.device,
      id: writer,
      role: 'owner',
      since: at,
      removed: false,
    };
    const members = new Map([[writer, owner]]);
    const [invitations, erased] = [new Map(), new Set<string>()];
    const founded: Rights = { epoch: 1, members, invitations, erased, gone: false };
    return { rights: founded, signer: said.device.sign };
  }
  if (rights === null) return { refused: 'no-class' };
  if (said.says === 'member') return comeIn(rights, writer, said, at);
  const member = rights.members.get(writer);
  if (!member) return { refused: 'no-member' };
  if (member.removed) return { refused: 'removed' };
  if (member.role !== 'owner') return { refused: 'not-allowed' };
  // It was made while another owner began a new epoch: its secrets would be taken for those of the new one.
  const isPast = 'epoch' in said && said.says !== 'epoch' && said.epoch !== rights.epoch;
  if (isPast && said.epoch !== undefined) return { refused: 'old-epoch' };
  const then = byOwner(rights, said, at);
  return then ? { rights: then, signer: member.sign } : { refused: 'not-allowed' };
}

function comeIn(
  rights: Rights,
  writer: string,
  said: RightsSaid & { readonly says: 'member' },
  at: number,
): { readonly rights: Rights; readonly signer: string } | { readonly refused: Refusal } {
  const invitation = rights.invitations.get(said.invite);
  if (!invitation) return { refused: 'no-member' };
  if (invitation.spent || invitation.until <= at) return { refused: 'spent' };
  const { role, sign } = invitation;
  const members = withMember(rights, { ...said.device, id: writer, role, since: at });
  if (members === null) return { refused: 'not-allowed' };
  return {
    signer: sign,
    rights: {
      ...rights,
      members,
      invitations: new Map(rights.invitations).set(said.invite, { ...invitation, spent: true }),
    },
  };
}

/** The members with one more; null when the class has or had one of this id, or one that signs its events so. */
function withMember(
  { members }: Rights,
  fresh: Omit<Member, 'removed'>,
): ReadonlyMap<string, Member> | null {
  const isTaken = [...members.values()].some(({ id, by }) => id === fresh.id || by === fresh.by);
  return isTaken ? null : new Map(members).set(fresh.id, { ...fresh, removed: false });
}

/** What an owner says; null when it cannot be said. */
function byOwner(
  rights: Rights,
  said: Exclude<RightsSaid, { readonly says: 'found' | 'member' }>,
  at: number,
): Rights | null {
  if (said.says === 'gone') return { ...rights, gone: true };
  if (said.says === 'packed') return rights;
  if (said.says === 'purge') {
    return { ...rights, erased: new Set([...rights.erased, ...said.ids]) };
  }
  if (said.says === 'epoch') {
    return said.epoch === rights.epoch + 1 ? { ...rights, epoch: said.epoch } : null;
  }
  if (said.says === 'invite') {
    const { invite: id, sign, box, role, until } = said;
    if (rights.invitations.has(id)) return null;
    const invitation: Invitation = { id, sign, box, role, until, spent: false };
    return { ...rights, invitations: new Map(rights.invitations).set(id, invitation) };
  }
  if (said.says === 'let-in') {
    const { device, id, role } = said;
    const members = withMember(rights, { ...device, id, role, since: at });
    return members && { ...rights, members };
  }
  const invitation = rights.invitations.get(said.device);
  if (invitation) {
    const spent = { ...invitation, spent: true };
    return { ...rights, invitations: new Map(rights.invitations).set(said.device, spent) };
  }
  const member = rights.members.get(said.device);
  const owners = staying(rights).filter(({ role }) => role === 'owner');
  const isLastOwner = owners.length === 1 && owners[0]?.id === said.device;
  if (!member || member.removed || isLastOwner) return null;
  const removed = { ...member, removed: true };
  return { ...rights, members: new Map(rights.members).set(said.device, removed) };
}
