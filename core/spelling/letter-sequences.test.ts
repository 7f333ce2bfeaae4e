import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { letterSequences } from './letter-sequences.ts';

describe('correct letter sequences', () => {
  /**
   * The rule: a point for each pair of letters in their order, the space before and behind counting as
   * letters; a word of n letters has n + 1 (White & Haring 1980; Hosp, Hosp & Howell, The ABCs of CBM,
   * 2007). Words and scores as remembered of such handbooks, from memory: none was seen.
   */
  it.each([
    ['talk', 'talk', 5, 5],
    ['talk', 'tolk', 3, 5],
    ['trick', 'trik', 4, 6],
    ['happen', 'hapen', 5, 7],
    ['rabbit', 'rabit', 5, 7],
    ['girl', 'gril', 2, 5],
    ['drop', 'dropp', 4, 5],
    ['ship', 'sip', 3, 5],
    ['cat', 'kat', 2, 4],
    ['cat', '', 0, 4],
  ])('%s written %s has %i of %i', (word, wrote, right, of) => {
    expect(letterSequences(word, wrote)).toEqual({ right, of });
  });

  const letters = fc.string({ unit: fc.constantFrom('a', 'b', 't'), minLength: 1, maxLength: 5 });

  it('are those of the best way to match letters one to one, in order', () => {
    fc.assert(
      fc.property(letters, letters, (word, wrote) => {
        expect(letterSequences(word, wrote).right).toBe(bestByTrying(`^${word}$`, `^${wrote}$`));
      }),
    );
  });

  it('are all of them for the word itself only', () => {
    fc.assert(
      fc.property(letters, letters, (word, wrote) => {
        const { right, of } = letterSequences(word, wrote);
        expect(right === of).toBe(word === wrote);
      }),
    );
  });
});

/** The naive twin: every way to match letters, each pair of matched neighbors a point. */
function bestByTrying(asked: string, given: string, a = 0, b = 0, last = false): number {
  if (a === asked.length || b === given.length) return 0;
  const matched =
    asked[a] === given[b]
      ? Number(last) + bestByTrying(asked, given, a + 1, b + 1, true)
      : Number.NEGATIVE_INFINITY;
  return Math.max(
    matched,
    bestByTrying(asked, given, a + 1, b, false),
    bestByTrying(asked, given, a, b + 1, false),
  );
}
