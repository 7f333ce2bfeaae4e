import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeShortCode, makeTyped, parseShortCode, parseTyped, SHORT } from './typed-code.ts';

const secrets = fc
  .uint8Array({ minLength: 16, maxLength: 16 })
  .map((bytes) => Buffer.from(bytes).toString('base64url'));

describe('a secret to type', () => {
  it('is the same again, however it is written down', () => {
    fc.assert(
      fc.property(secrets, (secret) => {
        const typed = makeTyped(secret);
        expect(parseTyped(typed)).toBe(secret);
        expect(parseTyped(` ${typed.toLowerCase().replaceAll('-', ' ')}`)).toBe(secret);
      }),
    );
  });

  it('is 26 signs in groups of four, without those that look alike', () => {
    fc.assert(
      fc.property(secrets, (secret) => {
        expect(makeTyped(secret)).toMatch(/^([A-HJ-NP-Z2-9]{4}-){6}[A-HJ-NP-Z2-9]{2}$/);
      }),
    );
  });

  it.each(['', '418 206', 'AAAA', '0OI1-AAAA-AAAA-AAAA-AAAA-AAAA-AA'])('is not %s', (text) => {
    expect(parseTyped(text)).toBeNull();
  });
});

describe('a short code', () => {
  it('is read back however it is typed, and is no secret of the long kind', () => {
    const chance = fc.uint8Array({ minLength: SHORT, maxLength: SHORT });
    fc.assert(
      fc.property(chance, (bytes) => {
        const code = makeShortCode(bytes);
        expect(code).toMatch(/^([A-HJ-NP-Z2-9]{4}-){2}[A-HJ-NP-Z2-9]{4}$/);
        expect(parseShortCode(code.toLowerCase().replaceAll('-', ' '))).toBe(
          code.replaceAll('-', ''),
        );
        expect(parseTyped(code)).toBeNull();
      }),
    );
  });

  it.each(['', 'KM4P-7QXD', 'KM4P-7QXD-2RW0'])('is not %s', (text) => {
    expect(parseShortCode(text)).toBeNull();
  });
});
