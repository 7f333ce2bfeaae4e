import { describe, expect, it } from 'vitest';
import { builtLexicon } from '../../test/built-lexicon.ts';
import type { Accent } from '../language/accent/accent.ts';
import { asSaidHere } from './as-said-here.ts';
import { inPlainWords } from './plain-words.ts';
import { readAttempt } from './read-attempt.ts';
import { isFamiliarIn, saidWord } from './said-word.ts';

const known = { taught: null, isFamiliar: isFamiliarIn(builtLexicon) };
const attempt = (word: string, wrote: string, accent: Accent) =>
  asSaidHere(readAttempt(saidWord(word, builtLexicon) ?? [], wrote, known), accent);
const isHeard = (word: string, wrote: string, accent: Accent) =>
  attempt(word, wrote, accent).cards.every(({ heard }) => heard);

/** What children write who speak so (Wells 1982, from memory, for the speech; the spellings are ours). */
const SPELLINGS = [
  ['pen', 'pin', 'pin-pen'],
  ['them', 'thim', 'pin-pen'],
  ['hill', 'heel', 'fill-feel'],
  ['bath', 'baf', 'th-fronted'],
  ['brother', 'brover', 'th-fronted'],
] as const;

describe('spelling as the class says it', () => {
  it.each(SPELLINGS)('%s written %s was heard with %s, and only there', (word, wrote, habit) => {
    expect(isHeard(word, wrote, [habit])).toBe(true);
    expect(isHeard(word, wrote, [])).toBe(false);
    expect(attempt(word, wrote, [habit]).wordRight).toBe(false);
  });

  it('is said to be the accent', () => {
    expect(inPlainWords(attempt('pen', 'pin', ['pin-pen']))).toBe(
      'heard every sound; e not yet; e as i is how we say it here',
    );
  });

  it('stays another sound where the accent does not reach', () => {
    expect(isHeard('pet', 'pit', ['pin-pen'])).toBe(false);
    expect(isHeard('this', 'vis', ['th-fronted'])).toBe(false);
  });
});
