import { type ClassId, isClassId } from '../../../core/ids.ts';
import { fromText, toText, utf8 } from './bytes.ts';
import {
  bytesFrom,
  type KeyPairs,
  keyFrom,
  makeSecret,
  packKeys,
  seal,
  unpackKeys,
  unseal,
} from './cipher.ts';

/** What the link of an invitation has: 128 bits, as 22 signs. */
export type InviteSecret = string;

/** What opens a class to whoever has the link. */
export interface OpenedInvitation {
  readonly id: string;
  readonly classId: ClassId;
  /** The device that shared the class first: with it begins what the new one believes. */
  readonly founder: string;
  readonly keys: KeyPairs;
  /** Whether it is for a wall, which comes in otherwise than the devices that read the class. */
  readonly isWall: boolean;
}

/** A secret for a link. */
export function makeInviteSecret(): InviteSecret {
  return toText(makeSecret(16));
}

/**
 * The secret that a short code stands for (core/sharing/typed-code.ts). Its sixty bits are made dear to try:
 * PBKDF2 (RFC 8018) with 600,000 rounds, as OWASP advises for SHA-256, so that who keeps what is left for it
 * cannot try them all.
 */
export async function secretOfCode(signs: string): Promise<InviteSecret> {
  const from = await crypto.subtle.importKey('raw', utf8(signs), 'PBKDF2', false, ['deriveBits']);
  const how = {
    name: 'PBKDF2',
    hash: 'SHA-256',
    salt: utf8('sweepline/1 short code'),
    iterations: 600_000,
  };
  return toText(new Uint8Array(await crypto.subtle.deriveBits(how, from, 128)));
}

/** The id of the invitation, which tells nothing of the secret. */
export async function invitationId(secret: InviteSecret): Promise<string> {
  return toText(await bytesFrom(fromText(secret), 'sweepline/1 invitation id', 16));
}

/** What is left at the server for whoever has the secret. */
export async function sealInvitation(
  secret: InviteSecret,
  { classId, founder, keys, isWall }: Omit<OpenedInvitation, 'id'>,
): Promise<string> {
  const text = JSON.stringify([classId, founder, await packKeys(keys), isWall ? 'wall' : '']);
  return seal(await boxKeyOf(secret), await invitationId(secret), utf8(text));
}

/** What was left; null when the secret is another, or the box damaged. */
export async function openInvitation(
  secret: InviteSecret,
  box: string,
): Promise<OpenedInvitation | null> {
  const id = await invitationId(secret);
  const bytes = await unseal(await boxKeyOf(secret), id, box);
  if (bytes === null) return null;
  try {
    const [ofClass, founder, packed, kind] = JSON.parse(new TextDecoder().decode(bytes));
    if (!isClassId(ofClass) || typeof founder !== 'string') return null;
    const keys = await unpackKeys(packed);
    return { id, classId: ofClass, founder, keys, isWall: kind === 'wall' };
  } catch {
    return null;
  }
}

function boxKeyOf(secret: InviteSecret): Promise<CryptoKey> {
  return keyFrom(fromText(secret), 'sweepline/1', 'invitation box');
}
