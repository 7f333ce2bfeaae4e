import { describe, expect, it } from 'vitest';
import { builtLexicon as lexicon } from '../../test/built-lexicon.ts';
import type { CardId } from '../language/card-id.ts';
import type { Habit, Taught } from '../language/taught.ts';
import { SEQUENCE } from '../sequence/built-in.ts';
import { taughtUpTo } from '../sequence/teach.ts';
import { sightParts } from './sight-parts.ts';

/** The letters with those that are learned by heart in brackets: `s[ai]d`. */
const marked = (word: string, taught: Taught) =>
  sightParts(word, taught, lexicon)
    .map(({ letters, byHeart }) => (byHeart ? `[${letters}]` : letters))
    .join('');

const taughtOf = (cards: readonly CardId[], habits: readonly Habit[] = []): Taught => ({
  correspondences: new Set(cards),
  habits: new Set(habits),
  irregularWords: new Set(),
});

describe('the part to learn of a word known by sight', () => {
  // By the spelling rules as teachers say them (common practice, no source): what no rule gives.
  it.each([
    ['said', 's[ai]d'],
    ['does', 'd[oe]s'],
    ['people', 'p[eo]ple'],
    ['friend', 'fr[ie]nd'],
    ['two', 't[wo]'],
    ['who', '[who]'],
    ['been', 'b[ee]n'],
    ['should', 'sh[oul]d'],
    ['answer', 'ans[w]er'],
    ['island', 'i[s]land'],
    ['eye', '[eye]'],
  ])('%s: %s, once all is taught', (word, parts) => {
    expect(marked(word, taughtUpTo(SEQUENCE, SEQUENCE.steps.length))).toBe(parts);
  });

  it('is whatever was not taught yet as well, and less with every card', () => {
    expect(marked('me', taughtOf([]))).toBe('[me]');
    expect(marked('me', taughtOf(['m=M']))).toBe('m[e]');
    expect(marked('me', taughtOf(['m=M', 'e=IY']))).toBe('me');
  });

  it('is all of a word that is not in the list', () => {
    expect(marked('qwzzt', taughtUpTo(SEQUENCE, SEQUENCE.steps.length))).toBe('[qwzzt]');
  });

  it('and the rest are the letters of the word, whichever word of the order it is', () => {
    const taught = taughtUpTo(SEQUENCE, 60);
    for (const word of taughtUpTo(SEQUENCE, SEQUENCE.steps.length).irregularWords) {
      const parts = sightParts(word, taught, lexicon);
      expect(parts.map(({ letters }) => letters).join('')).toBe(word);
      expect(parts.some(({ byHeart }, at) => parts[at + 1]?.byHeart === byHeart)).toBe(false);
    }
  });
});
