import { describe, expect, it } from 'vitest';
import { CORRESPONDENCES, correspondencesByGrapheme } from '../core/language/correspondences.ts';
import { builtLexicon } from './built-lexicon.ts';

/** How the CMU Pronouncing Dictionary, cut into cards, says each keyword that is in the word list. */
const said = CORRESPONDENCES.flatMap(({ id, keyword, parts }) => {
  const index = keyword === null ? -1 : builtLexicon.indexOf(keyword);
  if (index < 0) return [];
  const readings = builtLexicon.readings(index).map(({ cards }) => cards.map((card) => card.id));
  return [{ id, keyword, wanted: parts.length > 0 ? parts : [id], readings }];
});

describe('keywords', () => {
  it('have their card in them, as the dictionary says the word', () => {
    // Two are not so: forest, which some Americans say with the sound of far and others with that of
    // more (common practice, no source), and accent, which is cut between its two letters c.
    const apart = ['cc=K+S', 'or=AA+R'];
    const wrong = said.filter(
      ({ wanted, readings }) =>
        !readings.some((ids) => ` ${ids.join(' ')} `.includes(` ${wanted.join(' ')} `)),
    );
    expect(said.length).toBeGreaterThan(180);
    expect(wrong.map(({ id }) => id)).toEqual(apart);
  });

  it('tell apart cards with the same letters', () => {
    for (const cards of correspondencesByGrapheme.values()) {
      const keywords = cards.flatMap(({ keyword }) => keyword ?? []);
      expect(new Set(keywords).size, keywords.join(' ')).toBe(keywords.length);
    }
  });
});
