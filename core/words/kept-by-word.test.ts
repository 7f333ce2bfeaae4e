import { expect, it } from 'vitest';
import { keptByWord } from './kept-by-word.ts';
import type { Lexicon } from './lexicon.ts';

it('asks once of each word of each list, even where nothing is found', () => {
  const asked: string[] = [];
  const listOf = (...words: string[]) =>
    ({ size: words.length, word: (index) => words[index] }) as Lexicon;
  const longOnly = keptByWord((index, lexicon) => {
    const word = lexicon.word(index);
    asked.push(word);
    return word.length > 2 ? word : null;
  });
  const [one, other] = [listOf('at', 'cat'), listOf('mat')];
  for (let again = 0; again < 2; again++) {
    expect([longOnly(0, one), longOnly(1, one), longOnly(0, other)]).toEqual([null, 'cat', 'mat']);
  }
  expect(asked).toEqual(['at', 'cat', 'mat']);
});
