import { describe, expect, it } from 'vitest';
import { builtLexicon } from '../../../test/built-lexicon.ts';
import { piecesOfReading } from './pieces.ts';

function spelled(word: string): readonly string[] {
  const [reading] = builtLexicon.readings(builtLexicon.indexOf(word));
  return piecesOfReading(reading?.cards ?? []).map(({ card, part }) => {
    if (part === 'whole') return card.grapheme;
    return part === 'vowel' ? `${card.grapheme[0]}^` : 'e^';
  });
}

describe('the pieces of a word', () => {
  it.each([
    ['make', ['m', 'a^', 'k', 'e^']],
    ['ship', ['sh', 'i', 'p']],
    ['rabbit', ['r', 'a', 'bb', 'i', 't']],
  ])('%s stand in the order of its letters', (word, pieces) => {
    expect(spelled(word)).toEqual(pieces);
  });
});
