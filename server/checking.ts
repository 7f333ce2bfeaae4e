import { createHash, createPublicKey, type KeyObject, verify } from 'node:crypto';
import type { Checking } from '../core/sharing/rights.ts';

/** How the server checks signatures (ECDSA over P-256 with SHA-256) and ids. */
export const checking: Checking = {
  verify(key, text, signature) {
    const read = keyObject(key);
    if (read === null) return false;
    const signed = Buffer.from(signature, 'base64url');
    return verify('sha256', Buffer.from(text), { key: read, dsaEncoding: 'ieee-p1363' }, signed);
  },
  deviceIdOf: (key) =>
    createHash('sha256')
      .update(Buffer.from(key, 'base64url'))
      .digest()
      .subarray(0, 16)
      .toString('base64url'),
};

/** A public key from its point (65 bytes: 4, x, y); null when that is no point of the curve. */
function keyObject(point: string): KeyObject | null {
  const bytes = Buffer.from(point, 'base64url');
  if (bytes.length !== 65 || bytes[0] !== 4) return null;
  const [x, y] = [bytes.subarray(1, 33), bytes.subarray(33)];
  try {
    return createPublicKey({
      format: 'jwk',
      key: { kty: 'EC', crv: 'P-256', x: x.toString('base64url'), y: y.toString('base64url') },
    });
  } catch {
    return null;
  }
}
