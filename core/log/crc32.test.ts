import fc from 'fast-check';
import { expect, it } from 'vitest';
import { crc32 } from './crc32.ts';

it('has the published check values', () => {
  // "123456789" is the check text of the catalog of CRCs (CRC-32/ISO-HDLC); the other two are from memory.
  expect(crc32('123456789').toString(16)).toBe('cbf43926');
  expect(crc32('')).toBe(0);
  expect(crc32('The quick brown fox jumps over the lazy dog').toString(16)).toBe('414fa339');
});

it('reads any text as its bytes in UTF-8', () => {
  const bitByBit = (text: string): number => ~[...Buffer.from(text, 'utf8')].reduce(step, -1) >>> 0;
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme' }), (text) => {
      expect(crc32(text)).toBe(bitByBit(text));
    }),
  );
});

it('tells any one changed sign', () => {
  fc.assert(
    fc.property(
      fc.string({ minLength: 1 }),
      fc.nat(),
      fc.string({ minLength: 1, maxLength: 1 }),
      (text, at, sign) => {
        const place = at % text.length;
        const changed = text.slice(0, place) + sign + text.slice(place + 1);
        expect(crc32(changed) === crc32(text)).toBe(changed === text);
      },
    ),
  );
});

/** One byte more, bit by bit. */
function step(crc: number, byte: number): number {
  let next = crc ^ byte;
  for (let bit = 0; bit < 8; bit++) next = next & 1 ? (next >>> 1) ^ 0xedb88320 : next >>> 1;
  return next;
}
