import { describe, expect, test } from 'vitest';
import type { WordScreen } from './screen.ts';
import { parseScreenLine, screenLine } from './screen-line.ts';

function read(line: string): readonly [word: string, sounds: string] | string {
  const parsed = parseScreenLine(line);
  return 'line' in parsed ? [parsed.line.word, parsed.line.sounds.join(' ')] : parsed.error.code;
}

describe('a line of cards', () => {
  test.each([
    ['sh-i-p\tSH IH P', 'ship', 'SH IH P'],
    ['sh-i-p\tSH IH1 P\r', 'ship', 'SH IH P'],
    ['sh-i-p', 'ship', 'SH IH P'],
    ['c-a_e-k', 'cake', 'K EY K'],
    ['c-a_e-k-s', 'cakes', 'K EY K S'],
    ['p-a_e-s-t', 'paste', 'P EY S T'],
    ['n-a-p.k-i-n', 'napkin', 'N AE P K IH N'],
    ['p-u-pp.y', 'puppy', 'P AH P IY'],
    ['f-l-y', 'fly', 'F L AY'],
    ['y-a-k', 'yak', 'Y AE K'],
    ['br-ea=EH-d', 'bread', 'B R EH D'],
    ['k-ing\tK IH NG', 'king', 'K IH NG'],
  ])('%s', (line, word, sounds) => {
    expect(read(line)).toEqual([word, sounds]);
  });

  test.each([
    ['', 'no-cards'],
    ['\tSH IH P', 'no-cards'],
    ['s!-i-p\tS IH P', 'unknown-card'],
    ['sh-i-p\tSH XX', 'unknown-sounds'],
  ])('%j cannot be read', (line, code) => {
    expect(read(line)).toBe(code);
  });

  test('an unknown card is named, with cards one letter away', () => {
    const parsed = parseScreenLine('sk-i-pq');
    expect('error' in parsed && parsed.error).toMatchObject({ code: 'unknown-card', card: 'pq' });
    expect('error' in parsed && parsed.error.nearMisses).toContain('p');
  });

  test('its judgment comes with the cards as written', () => {
    const screen: WordScreen = {
      judge: (word) => ({ verdict: 'ask', category: 'insult', reason: word }),
    };
    expect(screenLine(screen, 'f-a-t')).toEqual({
      cards: 'f-a-t',
      sounds: 'F AE T',
      verdict: 'ask',
      category: 'insult',
      reason: 'fat',
    });
  });
});
