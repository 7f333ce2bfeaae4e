import { describe, expect, it } from 'vitest';
import { builtLexicon } from '../../test/built-lexicon.ts';
import { asMeant } from './as-meant.ts';
import { inPlainWords } from './plain-words.ts';
import { readAttempt } from './read-attempt.ts';
import { saidWord } from './said-word.ts';

const read = (word: string, wrote: string, isWord = false) =>
  readAttempt(saidWord(word, builtLexicon)!, wrote, { taught: null, isFamiliar: () => isWord });

describe('a reading as the teacher says it was meant', () => {
  it('s meant as sh: the sound was heard, its spelling is not yet known', () => {
    const meant = asMeant(read('ship', 'sip'), [1]);
    expect(meant.cards.map(({ verdict, heard }) => [verdict, heard])).toEqual([
      ['same-sound', true],
      ['same', true],
      ['same', true],
    ]);
    expect(inPlainWords(meant)).toBe('heard every sound; sh not yet');
    expect([meant.wrote, meant.wordRight, meant.sequences]).toEqual(
      (({ wrote, wordRight, sequences }) => [wrote, wordRight, sequences])(read('ship', 'sip')),
    );
  });

  it.each([
    ['a card that is right', 'ship', 'sip', [2]],
    ['a card left out: nothing stands for it', 'stop', 'sop', [2]],
    ['a card the word does not have', 'ship', 'sip', [9]],
    ['no card', 'ship', 'sip', []],
  ])('%s stays as it was read', (_, word, wrote, cards) => {
    const before = read(word, wrote);
    expect(asMeant(before, cards)).toBe(before);
  });
});
