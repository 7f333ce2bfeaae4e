import { createCipheriv, createDecipheriv, pbkdf2Sync } from 'node:crypto';
import { describe, expect, it, vi } from 'vitest';
import { deriveKey, isLocked, lockText, unlockText } from './lock.ts';

const text = 'Robin: ă for ĕ\n'.repeat(1000);
const hex = (value: string): Buffer => Buffer.from(value, 'hex');
const own = (bytes: Uint8Array): Uint8Array<ArrayBuffer> => Uint8Array.from(bytes);

async function locked(passphrase = 'moss and fern'): Promise<string> {
  const outcome = await lockText(text, passphrase);
  if ('error' in outcome) throw new Error(outcome.error.code);
  return outcome.locked;
}

describe('locking', () => {
  it('gives the text back for the passphrase, and each time another file', async () => {
    const [one, two] = [await locked(), await locked()];
    expect(await unlockText(one, 'moss and fern')).toEqual({ text });
    expect(one).not.toBe(two);
    expect(one).not.toContain('Robin');
    expect(isLocked(one)).toBe(true);
  });

  it('takes é typed as one sign or as two for one passphrase', async () => {
    expect(await unlockText(await locked('caf\u00e9'), 'cafe\u0301')).toEqual({ text });
  });

  it.each(['Moss and fern', 'moss and fern ', 'x'])('does not open for %j', async (passphrase) => {
    const outcome = await unlockText(await locked(), passphrase);
    expect(outcome).toMatchObject({ error: { code: 'wrong-passphrase' } });
  });

  it.each<[string, (file: string) => string]>([
    ['its end is cut off', (file) => file.slice(0, 400)],
    ['it asks for endless rounds', (file) => file.replace('"rounds":600000', '"rounds":99999999')],
    ['its salt is no Base64', (file) => file.replace(/"salt":"./, '"salt":"*')],
  ])('says that a file is damaged when %s', async (_, change) => {
    const outcome = await unlockText(change(await locked()), 'moss and fern');
    expect(outcome).toMatchObject({ error: { code: 'damaged' } });
  });

  it.each<[string, (file: string) => string]>([
    ['the rounds', (file) => file.replace('"rounds":600000', '"rounds":600001')],
    [
      'a sign of the text',
      (file) => file.replace(/"data":"(.)/, (_, a) => `"data":"${a === 'A' ? 'B' : 'A'}`),
    ],
  ])('does not open when %s was changed', async (_, change) => {
    const outcome = await unlockText(change(await locked()), 'moss and fern');
    expect(outcome).toMatchObject({ error: { code: 'wrong-passphrase' } });
  });

  it('says that a file is of a newer version', async () => {
    const newer = (await locked()).replace('"version":1', '"version":2');
    expect(await unlockText(newer, 'moss and fern')).toMatchObject({
      error: { code: 'newer-version' },
    });
  });

  it('needs a passphrase', async () => {
    expect(await lockText(text, '')).toMatchObject({ error: { code: 'no-passphrase' } });
    expect(await unlockText('{}', '')).toMatchObject({ error: { code: 'no-passphrase' } });
  });

  it('says so where the browser offers no cryptography, as over plain http', async () => {
    const file = await locked();
    vi.stubGlobal('crypto', { getRandomValues: crypto.getRandomValues });
    try {
      expect(await lockText(text, 'x')).toMatchObject({ error: { code: 'no-crypto' } });
      expect(await unlockText(file, 'x')).toMatchObject({ error: { code: 'no-crypto' } });
    } finally {
      vi.unstubAllGlobals();
    }
  });
});

describe('the lock, opened with another implementation (OpenSSL, by way of Node)', () => {
  it('has at least the 600,000 rounds that the OWASP Password Storage Cheat Sheet asks for (2023)', async () => {
    expect(JSON.parse(await locked()).key.rounds).toBeGreaterThanOrEqual(600_000);
  });

  it('opens', async () => {
    const { data, ...header } = JSON.parse(await locked());
    const salt = Buffer.from(header.key.salt, 'base64');
    const key = pbkdf2Sync('moss and fern', salt, header.key.rounds, 32, 'sha256');
    const bytes = Buffer.from(data, 'base64');
    const opening = createDecipheriv('aes-256-gcm', key, Buffer.from(header.cipher.iv, 'base64'));
    opening.setAAD(Buffer.from(JSON.stringify(header)));
    opening.setAuthTag(bytes.subarray(-16));
    const opened = Buffer.concat([opening.update(bytes.subarray(0, -16)), opening.final()]);
    expect(opened.toString()).toBe(text);
  });

  it('is opened here when it was locked there', async () => {
    const header = {
      format: 'sweepline-locked',
      version: 1,
      key: {
        name: 'PBKDF2',
        hash: 'SHA-256',
        rounds: 1000,
        salt: Buffer.alloc(16, 7).toString('base64'),
      },
      cipher: { name: 'AES-256-GCM', iv: Buffer.alloc(12, 9).toString('base64') },
    };
    const key = pbkdf2Sync('moss', Buffer.alloc(16, 7), 1000, 32, 'sha256');
    const closing = createCipheriv('aes-256-gcm', key, Buffer.alloc(12, 9));
    closing.setAAD(Buffer.from(JSON.stringify(header)));
    const data = Buffer.concat([closing.update(text), closing.final(), closing.getAuthTag()]);
    const file = JSON.stringify({ ...header, data: data.toString('base64') });
    expect(await unlockText(file, 'moss')).toEqual({ text });
  });
});

describe('the key of a passphrase', () => {
  // RFC 7914, section 11: PBKDF2-HMAC-SHA-256, the first 32 of 64 bytes.
  it.each([
    ['passwd', 'salt', 1, '55ac046e56e3089fec1691c22544b605f94185216dde0465e68b9d57c20dacbc'],
    [
      'Password',
      'NaCl',
      80_000,
      '4ddcd8f60b98be21830cee5ef22701f9641a4418d04c0414aeff08876b34ab56',
    ],
  ])(
    'is that of RFC 7914 for %j and %j after %d rounds',
    async (passphrase, salt, rounds, published) => {
      const key = await deriveKey(passphrase, own(Buffer.from(salt)), rounds);
      const iv = new Uint8Array(12);
      const made = await crypto.subtle.encrypt(
        { name: 'AES-GCM', iv },
        key,
        own(Buffer.from(text)),
      );
      const bytes = Buffer.from(made);
      const opening = createDecipheriv('aes-256-gcm', hex(published), iv);
      opening.setAuthTag(bytes.subarray(-16));
      opening.update(bytes.subarray(0, -16));
      expect(() => opening.final()).not.toThrow();
    },
  );

  it('locks by AES-256-GCM as published (McGrew & Viega, GCM specification, test case 14)', async () => {
    const raw = own(hex('00'.repeat(32)));
    const key = await crypto.subtle.importKey('raw', raw, 'AES-GCM', false, ['encrypt']);
    const iv = new Uint8Array(12);
    const made = await crypto.subtle.encrypt({ name: 'AES-GCM', iv }, key, new Uint8Array(16));
    expect(Buffer.from(made).toString('hex')).toBe(
      'cea7403d4d606b6e074ec5d3baf39d18d0d1c8a799996bf0265b98b5d48ab919',
    );
  });
});
