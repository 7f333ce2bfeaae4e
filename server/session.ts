import {
  type DeviceMessage,
  parseDeviceMessage,
  type ServerMessage,
} from '../core/sharing/message.ts';
import type { AppendQueue } from './append-queue.ts';
import { checking } from './checking.ts';
import type { ClassStore } from './class-store.ts';
import type { Identity } from './identity.ts';
import type { Limit } from './limits.ts';

/** What answers devices, whichever way their messages come. */
export interface SessionDesk {
  readonly store: ClassStore;
  readonly queue: AppendQueue;
  readonly identity: Identity;
  readonly now: () => number;
  /** How many records a device may append. */
  readonly appends: Limit;
  /** How often a device may ask for an invitation. */
  readonly fetches: Limit;
}

/** Whether a proof is good: the key is the device's, and signed a nonce of this server. */
export function isProven(
  { identity, now }: SessionDesk,
  { device, key, nonce, signature }: DeviceMessage & { readonly t: 'proof' },
): boolean {
  return (
    identity.isFresh(nonce, now()) &&
    checking.deviceIdOf(key) === device &&
    checking.verify(key, proofText(nonce), signature) === true
  );
}

/** What a device signs to say who it is. */
function proofText(nonce: string): string {
  return `sweepline/1 proof ${nonce}`;
}

/** What is said to one message of a proven device that is no proof and follows nothing. */
export async function answer(
  desk: SessionDesk,
  device: string,
  message: Extract<DeviceMessage, { readonly t: 'append' | 'deposit' | 'fetch' }>,
): Promise<ServerMessage> {
  const { k } = message;
  if (message.t === 'append') {
    const ms = desk.appends.take(device, message.records.length);
    if (ms > 0) return { t: 'later', k, ms };
    const { c: classId, records, pass } = message;
    const outcome = await desk.queue.append({ classId, records, pass: pass ?? null });
    if (outcome === null) return { t: 'later', k, ms: 2000 };
    if ('seqs' in outcome) return { t: 'kept', k, seqs: outcome.seqs };
    return { t: 'refused', k, id: outcome.id, why: outcome.refused };
  }
  const ms = desk.fetches.take(device);
  if (ms > 0) return { t: 'later', k, ms };
  if (message.t === 'fetch') {
    return { t: 'fetched', k, box: await desk.store.fetch(message.invite, desk.now()) };
  }
  const member = (await desk.store.rightsOf(message.c))?.members.get(device);
  const may = member?.role === 'owner' && !member.removed;
  const left = may && (await desk.store.deposit(message.c, message.invite, message.box));
  return left ? { t: 'deposited', k } : { t: 'refused', k, id: null, why: 'not-allowed' };
}

/** Reads a message from bytes or text; null when it is nothing that we know. */
export function readMessage(data: unknown): DeviceMessage | null {
  return parseDeviceMessage(String(data));
}
