import { shelf } from '../shelf.ts';

/** An id that was never given before: 120 bits of the browser's chance, in 20 signs. */
export function newId(): string {
  // Not randomUUID, which a page served over plain http has not.
  const bytes = crypto.getRandomValues(new Uint8Array(20));
  return Array.from(bytes, (byte) => signs[byte % signs.length]).join('');
}

/** The id of this browser on this device, the same until its storage is cleared. It says nothing of whose it is. */
export function deviceId(): string {
  const held = shelf.read('device');
  if (held) return held;
  const fresh = newId();
  shelf.write('device', fresh);
  return fresh;
}

const signs = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
