import { describe, expect, test } from 'vitest';
import { parseSounds } from '../language/phonemes.ts';
import { heard } from './screen-ear.ts';
import { lettersSeen } from './screen-letters.ts';
import { LOOSE, letterStems, opensSyllable, soundStems } from './screen-stems.ts';

function bases(text: string, spelledEd = false): readonly number[] {
  const codes = new Uint8Array(64);
  const out = new Uint8Array(8);
  const count = heard.plain(parseSounds(text) ?? [], codes);
  return [...out.subarray(0, soundStems(codes, count, spelledEd, out))].map((end) => end % LOOSE);
}

function letterBases(word: string): readonly number[] {
  const codes = new Uint8Array(64);
  const out = new Uint8Array(8);
  const count = lettersSeen(word, codes);
  return [...out.subarray(0, letterStems(codes, count, out))];
}

describe('the base before an ending is found by sound', () => {
  test.each([
    ['cats', 'K AE T S', 3],
    ['dishes', 'D IH SH IH Z', 3],
    ['jumped', 'JH AH M P T', 4],
    ['landed', 'L AE N D IH D', 4],
    ['camper', 'K AE M P ER', 4],
    ['campers', 'K AE M P ER Z', 4],
    ['camping', 'K AE M P IH NG', 4],
    ['sandy', 'S AE N D IY', 4],
    ['badly', 'B AE D L IY', 3],
    ['fattest', 'F AE T AX S T', 3],
    ['selfish', 'S EH L F IH SH', 4],
    ['bundle', 'B AH N D AX L', 4],
  ])('%s', (_, sounds, base) => {
    expect(bases(sounds)).toContain(base);
  });

  test('a t after a voiced sound is no ending, unless -ed is spelled', () => {
    expect(bases('B EH L T')).toEqual([4]);
    expect(bases('B EH L T', true)).toEqual([4, 3]);
  });

  test('a word without an ending is only itself', () => {
    expect(bases('SH IH P')).toEqual([3]);
    expect(bases('AE')).toEqual([1]);
  });
});

describe('and by letters, doubled ones counted once', () => {
  test.each([
    ['cats', 3],
    ['hopping', 3],
    ['hopped', 3],
    ['baker', 4],
    ['hoppers', 3],
    ['sunny', 3],
    ['kindest', 4],
  ])('%s', (word, base) => {
    expect(letterBases(word)).toContain(base);
  });

  test('held is no past of a shorter word', () => {
    expect(letterBases('held')).toEqual([4]);
  });
});

test('a part that its neighbor would join opens no syllable', () => {
  const codes = new Uint8Array(64);
  const at = (text: string, from: number) => {
    heard.plain(parseSounds(text) ?? [], codes);
    return opensSyllable(codes, from);
  };
  expect(at('M IH S T IH K', 3)).toBe(false);
  expect(at('M IH G R AE D', 3)).toBe(false);
  expect(at('N AE P K IH N', 3)).toBe(true);
});
