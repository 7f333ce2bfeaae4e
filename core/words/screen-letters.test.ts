import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lettersExactly, lettersSeen } from './screen-letters.ts';

function seen(word: string): string {
  const out = new Uint8Array(64);
  return out.slice(0, lettersSeen(word, out)).join(' ');
}

test.each([
  ['phone', 'fone'],
  ['cack', 'kak'],
  ['kick', 'kik'],
  ['fuzz', 'fuz'],
  ['queck', 'kuek'],
  ['box', 'bocks'],
  ['catch', 'cach'],
  ['cats', 'catz'],
  ['cell', 'sel'],
  ['Ship', 'ship'],
  ['niño', 'nino'],
])('%s looks like %s', (left, right) => {
  expect(seen(left)).toBe(seen(right));
});

test.each([
  ['boob', 'bob'],
  ['chin', 'kin'],
  ['ship', 'sip'],
  ['quiz', 'quis'],
  ['feed', 'fed'],
])('%s does not look like %s', (left, right) => {
  expect(seen(left)).not.toBe(seen(right));
});

test('any text gives at most 60 codes of 1 to 27', () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 300 }), (text) => {
      const out = new Uint8Array(64);
      for (const read of [lettersSeen, lettersExactly]) {
        const codes = out.slice(0, read(text, out));
        expect(codes.length).toBeLessThanOrEqual(61);
        expect(codes.every((code) => code >= 1 && code <= 27)).toBe(true);
      }
    }),
  );
});

test('a word of x alone, which each give two codes, still fits', () => {
  const out = new Uint8Array(64);
  expect(lettersSeen('x'.repeat(100), out)).toBeLessThanOrEqual(61);
});
