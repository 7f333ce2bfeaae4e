import { describe, expect, it } from 'vitest';
import { builtLexicon } from '../../test/built-lexicon.ts';
import { lexiconHere } from '../words/lexicon-here.ts';
import { heardAlso } from './heard-also.ts';

describe('words that are heard like a dictated one', () => {
  // National Curriculum in England, Appendix 1, Year 2: homophones and near-homophones.
  it.each([
    ['see', 'sea'],
    ['sun', 'son'],
    ['knight', 'night'],
    ['blue', 'blew'],
  ])('%s: %s', (word, other) => {
    expect(heardAlso(word, builtLexicon)).toContain(other);
  });

  it('are the class’s own', () => {
    expect(heardAlso('pen', builtLexicon)).toEqual([]);
    expect(heardAlso('pen', lexiconHere(builtLexicon, ['pin-pen']))).toEqual(['pin']);
    expect(heardAlso('caught', lexiconHere(builtLexicon, ['southern-british']))).toEqual(['court']);
  });

  it('are none for a word that is not listed', () => {
    expect(heardAlso('zzz', builtLexicon)).toEqual([]);
  });
});
