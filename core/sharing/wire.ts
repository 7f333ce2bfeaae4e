import { type Check, isWhole } from '../log/is-value.ts';

/** An id as devices make them: of classes, records, devices, invitations. */
export const isId: Check<string> = (value): value is string =>
  typeof value === 'string' && /^[\w-]{1,100}$/.test(value);

/** Bytes as base64url (RFC 4648, section 5) without padding, at most so many. */
export function isBytes(most: number): Check<string> {
  const signs = Math.ceil((most * 4) / 3);
  return (value): value is string =>
    typeof value === 'string' && value.length <= signs && /^[\w-]+$/.test(value);
}

/** A public key of P-256 as a point: 65 bytes. */
export const isKey: Check<string> = (value): value is string =>
  typeof value === 'string' && /^[\w-]{87}$/.test(value);

/** A signature by ECDSA over P-256, r and s: 64 bytes. */
export const isSignature: Check<string> = (value): value is string =>
  typeof value === 'string' && /^[\w-]{86}$/.test(value);

/** A count: of a class's records, of milliseconds. */
export const isCount = isWhole(0);
