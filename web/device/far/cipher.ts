/**
 * What WebCrypto does for sharing, and nothing else: signatures (ECDSA over P-256 with SHA-256), secrets
 * sealed to a key (ECDH, HKDF-SHA-256, AES-256-GCM), and sealing under a secret. P-256 and not Ed25519,
 * which Chrome has only from 137 on.
 */
import type { Checking } from '../../../core/sharing/rights.ts';
import { fromText, joined, toText, utf8 } from './bytes.ts';

/** A device's or an invitation's two pairs of keys. */
export interface KeyPairs {
  readonly sign: CryptoKeyPair;
  readonly box: CryptoKeyPair;
}

const SIGN = { name: 'ECDSA', namedCurve: 'P-256' };
const BOX = { name: 'ECDH', namedCurve: 'P-256' };
const SIGNATURE = { name: 'ECDSA', hash: 'SHA-256' };

/** Makes keys; those of a device cannot be taken out of the browser, those of an invitation can. */
export async function makeKeys(extractable: boolean): Promise<KeyPairs> {
  const [sign, box] = await Promise.all([
    crypto.subtle.generateKey(SIGN, extractable, ['sign', 'verify']),
    crypto.subtle.generateKey(BOX, extractable, ['deriveBits']),
  ]);
  return { sign, box };
}

/** A public key as the wire has it: its point, 65 bytes. */
export async function publicText(key: CryptoKey): Promise<string> {
  return toText(new Uint8Array(await crypto.subtle.exportKey('raw', key)));
}

/** Signs a text. */
export async function signText(key: CryptoKey, text: string): Promise<string> {
  return toText(new Uint8Array(await crypto.subtle.sign(SIGNATURE, key, utf8(text))));
}

/** How a device checks signatures and ids; keys once read are kept, since there are few. */
export function createChecking(): Checking {
  const keys = new Map<string, Promise<CryptoKey>>();
  return {
    async verify(key, text, signature) {
      try {
        const read =
          keys.get(key) ?? crypto.subtle.importKey('raw', fromText(key), SIGN, false, ['verify']);
        keys.set(key, read);
        return await crypto.subtle.verify(SIGNATURE, await read, fromText(signature), utf8(text));
      } catch {
        return false;
      }
    },
    deviceIdOf,
  };
}

/** The id of who signs with this key: the first half of its hash. */
export async function deviceIdOf(key: string): Promise<string> {
  const hash = await crypto.subtle.digest('SHA-256', fromText(key));
  return toText(new Uint8Array(hash).subarray(0, 16));
}

/** A new secret, 256 bits, or as many as asked for. */
export function makeSecret(bytes = 32): Uint8Array<ArrayBuffer> {
  return crypto.getRandomValues(new Uint8Array(bytes));
}

/** A key from a secret, for one use that `info` names. */
export async function keyFrom(
  secret: Uint8Array<ArrayBuffer>,
  salt: string,
  info: string,
): Promise<CryptoKey> {
  const from = await crypto.subtle.importKey('raw', secret, 'HKDF', false, ['deriveKey']);
  const how = { name: 'HKDF', hash: 'SHA-256', salt: utf8(salt), info: utf8(info) };
  return crypto.subtle.deriveKey(how, from, { name: 'AES-GCM', length: 256 }, false, [
    'encrypt',
    'decrypt',
  ]);
}

/** So many bytes from a secret, for one use that `info` names. */
export async function bytesFrom(
  secret: Uint8Array<ArrayBuffer>,
  info: string,
  count: number,
): Promise<Uint8Array<ArrayBuffer>> {
  const from = await crypto.subtle.importKey('raw', secret, 'HKDF', false, ['deriveBits']);
  const how = { name: 'HKDF', hash: 'SHA-256', salt: new Uint8Array(), info: utf8(info) };
  return new Uint8Array(await crypto.subtle.deriveBits(how, from, count * 8));
}

const NONCE_BYTES = 12;

/** Seals bytes; `header` is not hidden, but the seal holds with no other. */
export async function seal(
  key: CryptoKey,
  header: string,
  bytes: Uint8Array<ArrayBuffer>,
): Promise<string> {
  const iv = makeSecret(NONCE_BYTES);
  const how = { name: 'AES-GCM', iv, additionalData: utf8(header) };
  return toText(joined(iv, new Uint8Array(await crypto.subtle.encrypt(how, key, bytes))));
}

/** What was sealed; null when the key, the header or the text is another. */
export async function unseal(
  key: CryptoKey,
  header: string,
  text: string,
): Promise<Uint8Array<ArrayBuffer> | null> {
  try {
    const all = fromText(text);
    const how = {
      name: 'AES-GCM',
      iv: all.subarray(0, NONCE_BYTES),
      additionalData: utf8(header),
    };
    return new Uint8Array(await crypto.subtle.decrypt(how, key, all.subarray(NONCE_BYTES)));
  } catch {
    return null;
  }
}

const POINT_BYTES = 65;

/** Seals bytes to a public key, for a purpose that opening must name. */
export async function sealTo(
  publicKey: string,
  purpose: string,
  bytes: Uint8Array<ArrayBuffer>,
): Promise<string> {
  const once = await crypto.subtle.generateKey(BOX, false, ['deriveBits']);
  const to = await crypto.subtle.importKey('raw', fromText(publicKey), BOX, false, []);
  const point = await publicText(once.publicKey);
  const key = await boxKey(once.privateKey, to, `${point} ${publicKey} ${purpose}`);
  return toText(joined(fromText(point), fromText(await seal(key, purpose, bytes))));
}

/** What was sealed to a key; null when it was not. */
export async function openSealed(
  pair: CryptoKeyPair,
  purpose: string,
  text: string,
): Promise<Uint8Array<ArrayBuffer> | null> {
  try {
    const all = fromText(text);
    const point = all.subarray(0, POINT_BYTES);
    const from = await crypto.subtle.importKey('raw', point, BOX, false, []);
    const own = await publicText(pair.publicKey);
    const key = await boxKey(pair.privateKey, from, `${toText(point)} ${own} ${purpose}`);
    return await unseal(key, purpose, toText(all.subarray(POINT_BYTES)));
  } catch {
    return null;
  }
}

async function boxKey(own: CryptoKey, other: CryptoKey, info: string): Promise<CryptoKey> {
  const shared = await crypto.subtle.deriveBits({ name: 'ECDH', public: other }, own, 256);
  return keyFrom(new Uint8Array(shared), 'sweepline/1', info);
}

/** An invitation's keys as bytes to be sealed, and back; from then on they cannot be taken out again. */
export async function packKeys({ sign, box }: KeyPairs): Promise<string> {
  const keys = [sign.privateKey, sign.publicKey, box.privateKey, box.publicKey];
  return JSON.stringify(await Promise.all(keys.map((key) => crypto.subtle.exportKey('jwk', key))));
}

/** The keys that `packKeys` packed. Rejects on anything else. */
export async function unpackKeys(text: string): Promise<KeyPairs> {
  const [sign, verify, own, other] = JSON.parse(text) as readonly JsonWebKey[];
  const read = (jwk: JsonWebKey | undefined, how: typeof SIGN, uses: readonly KeyUsage[]) =>
    crypto.subtle.importKey(
      'jwk',
      { ...jwk, ext: true },
      how,
      uses.length === 0 || uses[0] === 'verify',
      [...uses],
    );
  return {
    sign: {
      privateKey: await read(sign, SIGN, ['sign']),
      publicKey: await read(verify, SIGN, ['verify']),
    },
    box: {
      privateKey: await read(own, BOX, ['deriveBits']),
      publicKey: await read(other, BOX, []),
    },
  };
}
