import { describe, expect, it } from 'vitest';
import { readTextBytes } from './open-file.ts';

const utf8 = (text: string) => new TextEncoder().encode(text);

describe('a text file', () => {
  it('is read as UTF-8, without its mark and with plain line ends', () => {
    expect(readTextBytes(utf8('\ufeff“Stop,” said Mo.\r\nHe sat.'))).toEqual({
      kind: 'text',
      text: '“Stop,” said Mo.\nHe sat.',
    });
  });

  it('is read as an older Windows file where it is no UTF-8', () => {
    // 0xe9 is é in windows-1252 (Encoding Standard, WHATWG).
    expect(readTextBytes(Uint8Array.of(0x63, 0x61, 0x66, 0xe9))).toEqual({
      kind: 'text',
      text: 'café',
    });
  });

  it.each([
    ['no-text', Uint8Array.of(0x50, 0x4b, 3, 4, 0, 0)],
    ['no-text', utf8('%PDF-1.7 and so on')],
    ['too-large', new Uint8Array(5_000_001).fill(97)],
  ])('is refused with a way out: %s', (code, bytes) => {
    const opened = readTextBytes(bytes);
    expect(opened).toMatchObject({ kind: 'refused', code });
  });
});
