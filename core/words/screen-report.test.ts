import { expect, test } from 'vitest';
import type { ScreenVerdict } from './screen.ts';
import { hiddenWords } from './screen-report.ts';

test('what is hidden is told once, with its reason, what is to be decided first', () => {
  const one = (word: string, verdict: ScreenVerdict) => ({
    word,
    sounds: ['B', 'IH', 'M'] as const,
    screened: { verdict, category: 'insult', reason: 'looks like an insult' },
  });
  const hidden = hiddenWords([
    one('bim', 'stop'),
    one('sun', 'clear'),
    one('fat', 'ask'),
    one('bim', 'stop'),
  ]);
  expect(hidden.map(({ word, verdict }) => [word, verdict])).toEqual([
    ['fat', 'ask'],
    ['bim', 'stop'],
  ]);
  expect(hidden[0]).toMatchObject({ category: 'insult', reason: 'looks like an insult' });
});
