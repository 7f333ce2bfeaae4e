import { expect, test } from 'vitest';
import type { WordScreen } from './screen.ts';
import { hiddenWords } from './screen-report.ts';

const screen: WordScreen = {
  judge(word) {
    if (word === 'sun') return { verdict: 'clear', category: null, reason: null };
    const verdict = word === 'fat' ? 'ask' : 'stop';
    return { verdict, category: 'insult', reason: 'looks like an insult' };
  },
};

test('what is hidden is told once, with its reason, what is to be decided first', () => {
  const one = (word: string) => ({ word, sounds: ['B', 'IH', 'M'] as const });
  const hidden = hiddenWords([one('bim'), one('sun'), one('fat'), one('bim')], screen);
  expect(hidden.map(({ word, verdict }) => [word, verdict])).toEqual([
    ['fat', 'ask'],
    ['bim', 'stop'],
  ]);
  expect(hidden[0]).toMatchObject({ category: 'insult', reason: 'looks like an insult' });
});
