import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeTyped, parseTyped } from './typed-code.ts';

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
