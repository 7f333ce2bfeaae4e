import type { ClassId, DrillId, EventId } from '../../../core/ids.ts';
import { erasedWith, isErased } from '../../../core/log/erased.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import { type Admitted, admit } from '../../../core/sharing/admit.ts';
import { type ClassRecord, type KeptRecord, signedText } from '../../../core/sharing/record.ts';
import {
  judge,
  type Member,
  open,
  type Refusal,
  type Rights,
  staying,
} from '../../../core/sharing/rights.ts';
import {
  type DeviceKeys,
  makeRightsSaid,
  parseRightsSaid,
  type RightsSaid,
  type SealedSecrets,
} from '../../../core/sharing/rights-said.ts';
import { type Lane, mayRead, type Role } from '../../../core/sharing/role.ts';
import { createChecking, makeKeys, publicText, seal, signText, unseal } from './cipher.ts';
import { createClassKeys, makeChain, makeSecrets, openSecrets, sealSecrets } from './class-keys.ts';
import {
  type InviteSecret,
  invitationId,
  makeInviteSecret,
  type OpenedInvitation,
  sealInvitation,
} from './invitation.ts';
import { keysOf, type OwnDevice } from './own-device.ts';
import { sealEvents, unsealEvents } from './sealed-events.ts';
import { wallSecret } from './wall-key.ts';

/** A shared class as one device reads and writes it; without a network. */
export interface SharedClass {
  /** Who may do what, after all records that were taken; null before the first. */
  rights(): Rights | null;
  /**
   * Takes the next record in order: judges it again, whatever the server said, and gives what comes of it.
   * What was sealed before this device came in waits until it has read how it came in; then all of it is
   * given. `writtenBy` says which device wrote an event that is here.
   */
  take(
    record: KeptRecord,
    writtenBy: (event: EventId) => string | undefined,
  ): Promise<readonly Taken[]>;
  /** Whether anything waits. */
  isWaiting(): boolean;
  /** Events of one lane as a record, sealed by now; null when this device cannot seal on that lane. */
  sealed(
    lane: Lane,
    id: string,
    count: number,
    events: readonly LogEvent[],
  ): Promise<ClassRecord | null>;
  /** The record with which the class begins to be shared. */
  found(): Promise<ClassRecord>;
  /** The record with which this device comes in. */
  comeIn(invitation: OpenedInvitation): Promise<ClassRecord>;
  /** An invitation: its record, what is to be left at the server, and the secret for the link. */
  invite(
    role: Role,
    until: number,
    secret?: InviteSecret,
  ): Promise<{
    readonly record: ClassRecord;
    readonly id: string;
    readonly box: string;
    readonly secret: string;
  }>;
  /** The record with which an owner lets a device in without an invitation. */
  letIn(device: DeviceKeys & { readonly id: string }, role: Role): Promise<ClassRecord>;
  /** The records that remove a device or an invitation and begin a new epoch without it. */
  remove(id: string, now: number): Promise<readonly ClassRecord[]>;
  /** The record that tells the server what is in later records as well (pack-class.ts). */
  packed(runs: readonly (readonly [number, number])[], trace: number): Promise<ClassRecord>;
  /** The record that erases what these ids stand for, everywhere and for good. */
  purge(ids: readonly string[]): Promise<ClassRecord>;
  /** Something of the moment, sealed for who runs warm-ups in the class now; null when this device cannot. */
  sealLive(bytes: Uint8Array<ArrayBuffer>): Promise<string | null>;
  /** What another device sealed so; null when it was sealed for others, or before the keys changed. */
  openLive(body: string): Promise<Uint8Array<ArrayBuffer> | null>;
  /** What the key of one warm-up is made from, by which walls show it; null when this device cannot. */
  wallSecret(drillId: DrillId): Promise<Uint8Array<ArrayBuffer> | null>;
  /** The record that deletes the class everywhere. */
  deleted(): Promise<ClassRecord>;
}

/** What a record at a place brought, or why it does not count or cannot be opened. */
export type Taken = { readonly seq: number } & (
  | {
      readonly kind: 'events';
      readonly admitted: Admitted;
      /** Whether it also held something that was erased before, and is left out. */
      readonly holdsErased: boolean;
    }
  | { readonly kind: 'aside'; readonly why: Refusal | 'unreadable' | 'another-founder' }
);

/** What a shared class needs to know. */
export interface SharedClassSpec {
  readonly classId: ClassId;
  readonly own: OwnDevice;
  /** The device that shared it first, as the invitation has it; this one's own id when it did. */
  readonly founder: string;
  /** With which this device came in; null for the one that shared it. */
  readonly invitation: Pick<OpenedInvitation, 'id' | 'keys'> | null;
  readonly newId: () => string;
}

/** A class of which nothing has been read yet. */
export function createSharedClass(spec: SharedClassSpec): SharedClass {
  const { classId, own, founder, invitation, newId } = spec;
  const keys = createClassKeys(classId);
  const checking = createChecking();
  let rights: Rights | null = null;
  /** What was erased, and what came of it since, by ids. */
  let erased: ReadonlySet<string> = new Set();
  let waiting: { readonly record: KeptRecord; readonly writer: Member }[] = [];
  return {
    rights: () => rights,
    async take(record, writtenBy) {
      const before: Rights | null = rights;
      const outcome = await judge(classId, before, record, record.at, checking);
      if ('refused' in outcome) return [{ kind: 'aside', seq: record.seq, why: outcome.refused }];
      if (record.lane === 'rights') {
        if (before === null && record.writer !== founder) {
          return [{ kind: 'aside', seq: record.seq, why: 'another-founder' }];
        }
        // The keys first: whoever asks meanwhile has rights and keys of one epoch.
        await learn(parseRightsSaid(record.body), outcome.rights.epoch);
        rights = outcome.rights;
      } else {
        const writer = outcome.rights.members.get(record.writer);
        if (writer) waiting.push({ record, writer });
      }
      return openWaiting(writtenBy);
    },
    isWaiting: () => waiting.length > 0,
    async sealed(lane, id, count, events) {
      const epoch = rights?.epoch ?? 0;
      const key = await keys.keyOf(epoch, lane);
      if (key === null) return null;
      const header = { id, writer: own.id, count, epoch, lane };
      return signed({ ...header, body: await sealEvents(key, classId, header, events) });
    },
    async found() {
      const secrets = makeSecrets();
      const sealed = await sealSecrets(own.box, 'owner', classId, 1, secrets);
      return said({ says: 'found', device: keysOf(own), sealed });
    },
    comeIn: (opened) =>
      said({ says: 'member', invite: opened.id, device: keysOf(own) }, opened.keys.sign.privateKey),
    async invite(role, until, secret = makeInviteSecret()) {
      const id = await invitationId(secret);
      const pairs = await makeKeys(true);
      const sign = await publicText(pairs.sign.publicKey);
      const box = await publicText(pairs.box.publicKey);
      const epoch = rights?.epoch ?? 0;
      const sealed = await sealSecrets(box, role, classId, epoch, keys.secretsOf(epoch));
      const record = await said({
        says: 'invite',
        invite: id,
        sign,
        box,
        role,
        until,
        epoch,
        sealed,
      });
      return {
        record,
        id,
        secret,
        box: await sealInvitation(secret, {
          classId,
          founder,
          keys: pairs,
          isWall: role === 'wall',
        }),
      };
    },
    async letIn({ id, sign, box, by }, role) {
      const epoch = rights?.epoch ?? 0;
      const sealed = await sealSecrets(box, role, classId, epoch, keys.secretsOf(epoch));
      return said({ says: 'let-in', id, device: { sign, box, by }, role, epoch, sealed });
    },
    async remove(id, now) {
      if (rights === null) return [];
      const epoch = rights.epoch + 1;
      const next = makeSecrets();
      const sealed: Record<string, SealedSecrets> = {};
      for (const one of [...staying(rights), ...open(rights, now)]) {
        if (one.id !== id)
          sealed[one.id] = await sealSecrets(one.box, one.role, classId, epoch, next);
      }
      const chain = await makeChain(classId, epoch, next, keys.secretsOf(rights.epoch));
      return [
        await said({ says: 'revoke', device: id }),
        await said({ says: 'epoch', epoch, sealed, chain }),
      ];
    },
    purge: (ids) => said({ says: 'purge', ids }),
    packed: (runs, trace) => said({ says: 'packed', runs, trace }),
    async sealLive(bytes) {
      const key = await keys.keyOf(rights?.epoch ?? 0, 'run');
      return key && seal(key, liveHeader(), bytes);
    },
    async openLive(body) {
      const key = await keys.keyOf(rights?.epoch ?? 0, 'run');
      return key && unseal(key, liveHeader(), body);
    },
    async wallSecret(drillId) {
      const { run } = keys.secretsOf(rights?.epoch ?? 0);
      return run ? wallSecret(run, classId, drillId) : null;
    },
    deleted: () => said({ says: 'gone' }),
  };

  /** Opens what waits, as far as this device has the keys by now, in order. */
  async function openWaiting(
    writtenBy: (event: EventId) => string | undefined,
  ): Promise<readonly Taken[]> {
    const reader = rights?.members.get(own.id);
    if (!reader) return [];
    const taken: Taken[] = [];
    const brought = new Map<EventId, string>();
    for (const { record, writer } of waiting) {
      const { lane, epoch, seq } = record;
      if (lane === 'rights' || !mayRead(reader.role, lane)) continue;
      const key = await keys.keyOf(epoch, lane);
      const events = key && (await unsealEvents(key, classId, record));
      if (!events) {
        taken.push({ kind: 'aside', seq, why: 'unreadable' });
        continue;
      }
      const byId = (event: EventId) => brought.get(event) ?? writtenBy(event);
      const named = rights?.erased ?? new Set();
      if (named.size > 0) erased = erasedWith(events, [...erased, ...named]);
      const left = events.filter((event) => !isErased(event, erased));
      const admitted = admit(classId, record, writer, left, byId);
      for (const { id, by } of admitted.events) brought.set(id, by);
      const holdsErased = left.length < events.length;
      taken.push({ kind: 'events', seq, admitted, holdsErased });
    }
    waiting = [];
    return taken;
  }

  function liveHeader(): string {
    return `sweepline/1 live ${classId} ${rights?.epoch ?? 0}`;
  }

  /** What this device learns of secrets from what was said of rights. */
  async function learn(what: RightsSaid | null, epoch: number): Promise<void> {
    if (what?.says === 'found') await unlock(1, what.sealed, own.keys.box);
    if (what?.says === 'invite' && what.invite === invitation?.id) {
      await unlock(epoch, what.sealed, invitation.keys.box);
    }
    if (what?.says === 'let-in' && what.id === own.id) {
      await unlock(epoch, what.sealed, own.keys.box);
    }
    if (what?.says !== 'epoch') return;
    await keys.chain(what.epoch, what.chain);
    const toMe = what.sealed[own.id];
    const invited = invitation && what.sealed[invitation.id];
    if (toMe) await unlock(what.epoch, toMe, own.keys.box);
    else if (invited) await unlock(what.epoch, invited, invitation.keys.box);
  }

  async function unlock(epoch: number, sealed: SealedSecrets, pair: CryptoKeyPair): Promise<void> {
    await keys.learn(epoch, await openSecrets(pair, classId, epoch, sealed));
  }

  function said(what: RightsSaid, key?: CryptoKey): Promise<ClassRecord> {
    const header = { id: newId(), writer: own.id, count: 0, epoch: 0, lane: 'rights' as const };
    return signed({ ...header, body: makeRightsSaid(what) }, key);
  }

  async function signed(
    record: Omit<ClassRecord, 'signature'>,
    key = own.keys.sign.privateKey,
  ): Promise<ClassRecord> {
    return { ...record, signature: await signText(key, signedText(classId, record)) };
  }
}
