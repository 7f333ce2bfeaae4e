import { isObject, isOneOf, isShape, isText, isWhole } from '../../../core/log/is-value.ts';

/** Why a text could not be locked or opened, and what to do. */
export interface LockError {
  readonly code: 'no-passphrase' | 'wrong-passphrase' | 'damaged' | 'newer-version' | 'no-crypto';
  readonly message: string;
}

/**
 * Locks a text with a passphrase, as a text again. Whoever has it not can read
 * nothing; without it nobody can, so she must be told to keep it.
 *
 * Method: a key by PBKDF2 with HMAC-SHA-256 (RFC 8018) over a fresh salt and
 * 600,000 rounds (OWASP Password Storage Cheat Sheet, 2023), then AES-256-GCM
 * (NIST SP 800-38D) with a fresh nonce; the header is authenticated too. The
 * passphrase counts in its NFKC form, so that é typed on two keyboards is one.
 */
export async function lockText(
  text: string,
  passphrase: string,
): Promise<{ readonly locked: string } | { readonly error: LockError }> {
  if (passphrase === '') return failure('no-passphrase');
  if (!hasCrypto()) return failure('no-crypto');
  const salt = crypto.getRandomValues(new Uint8Array(16));
  const iv = crypto.getRandomValues(new Uint8Array(12));
  const header: Header = {
    format,
    version,
    key: { name: 'PBKDF2', hash: 'SHA-256', rounds: ROUNDS, salt: toBase64(salt) },
    cipher: { name: 'AES-256-GCM', iv: toBase64(iv) },
  };
  const key = await deriveKey(passphrase, salt, ROUNDS);
  const data = await crypto.subtle.encrypt(
    { name: 'AES-GCM', iv, additionalData: bytesOf(JSON.stringify(header)) },
    key,
    bytesOf(text),
  );
  return { locked: `${JSON.stringify({ ...header, data: toBase64(new Uint8Array(data)) })}\n` };
}

/** Opens what `lockText` locked. A changed file and a wrong passphrase look the same. */
export async function unlockText(
  locked: string,
  passphrase: string,
): Promise<{ readonly text: string } | { readonly error: LockError }> {
  if (passphrase === '') return failure('no-passphrase');
  if (!hasCrypto()) return failure('no-crypto');
  const value = parseJson(locked);
  if (isObject(value) && isNewer(value.version)) return failure('newer-version');
  if (!isEnvelope(value)) return failure('damaged');
  const { data, ...rest } = value;
  const [salt, iv, bytes] = [rest.key.salt, rest.cipher.iv, data].map(fromBase64);
  if (!salt || !iv || !bytes) return failure('damaged');
  const { name, hash, rounds } = rest.key;
  const header: Header = {
    format,
    version,
    key: { name, hash, rounds, salt: rest.key.salt },
    cipher: { name: rest.cipher.name, iv: rest.cipher.iv },
  };
  const key = await deriveKey(passphrase, salt, rounds);
  try {
    const text = await crypto.subtle.decrypt(
      { name: 'AES-GCM', iv, additionalData: bytesOf(JSON.stringify(header)) },
      key,
      bytes,
    );
    return { text: new TextDecoder().decode(text) };
  } catch {
    return failure('wrong-passphrase');
  }
}

/** Whether a text is one that `lockText` wrote, whole or damaged. */
export function isLocked(text: string): boolean {
  return /^\uFEFF?\s*\{\s*"format"\s*:\s*"sweepline-locked"/.test(text);
}

/** The AES-256 key of a passphrase. */
export async function deriveKey(
  passphrase: string,
  salt: Uint8Array<ArrayBuffer>,
  iterations: number,
): Promise<CryptoKey> {
  const words = bytesOf(passphrase.normalize('NFKC'));
  const material = await crypto.subtle.importKey('raw', words, 'PBKDF2', false, ['deriveKey']);
  return crypto.subtle.deriveKey(
    { name: 'PBKDF2', hash: 'SHA-256', salt, iterations },
    material,
    { name: 'AES-GCM', length: 256 },
    false,
    ['encrypt', 'decrypt'],
  );
}

const format = 'sweepline-locked';
const version = 1;
const ROUNDS = 600_000;
/** A file that asks for more would only keep the browser busy. */
const mostRounds = 10_000_000;

interface Header {
  readonly format: typeof format;
  readonly version: typeof version;
  readonly key: {
    readonly name: 'PBKDF2';
    readonly hash: 'SHA-256';
    readonly rounds: number;
    /** Base64. */
    readonly salt: string;
  };
  readonly cipher: { readonly name: 'AES-256-GCM'; readonly iv: string };
}

const isEnvelope = isShape<Header & { readonly data: string }>({
  format: isOneOf([format]),
  version: (value): value is typeof version => value === version,
  key: isShape<Header['key']>({
    name: isOneOf(['PBKDF2']),
    hash: isOneOf(['SHA-256']),
    rounds: isWhole(1, mostRounds),
    salt: isText,
  }),
  cipher: isShape<Header['cipher']>({ name: isOneOf(['AES-256-GCM']), iv: isText }),
  data: isText,
});

function isNewer(found: unknown): boolean {
  return typeof found === 'number' && found > version;
}

function hasCrypto(): boolean {
  return globalThis.crypto?.subtle !== undefined;
}

function bytesOf(text: string): Uint8Array<ArrayBuffer> {
  return new TextEncoder().encode(text);
}

function toBase64(bytes: Uint8Array): string {
  let text = '';
  // In pieces, since a call takes only so many arguments.
  for (let at = 0; at < bytes.length; at += 8192) {
    text += String.fromCharCode(...bytes.subarray(at, at + 8192));
  }
  return btoa(text);
}

/** The bytes, or null when the text is no Base64. */
function fromBase64(text: string): Uint8Array<ArrayBuffer> | null {
  try {
    return Uint8Array.from(atob(text), (sign) => sign.charCodeAt(0));
  } catch {
    return null;
  }
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return undefined;
  }
}

function failure(code: LockError['code']): { readonly error: LockError } {
  return { error: { code, message: sentences[code] } };
}

const sentences: Readonly<Record<LockError['code'], string>> = {
  'no-passphrase': 'This needs a passphrase. Type one.',
  'wrong-passphrase':
    'This passphrase does not open the file. Look out for capitals and spaces. If you are sure of it, the file was changed on its way; try another copy.',
  damaged: 'This locked file is damaged and cannot be opened. Try another copy of it.',
  'newer-version':
    'This file was locked by a newer Sweepline. Open the newest one on this device and bring the file in again.',
  'no-crypto':
    'A page opened over plain http cannot lock or open files. Open Sweepline over https or on this computer itself, or use a file without a passphrase.',
};
