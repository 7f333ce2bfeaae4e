import { describe, expect, test } from 'vitest';
import { builtLexicon } from '../../test/built-lexicon.ts';
import { parseNames, soundedNames } from './name-sounds.ts';

const lexicon = builtLexicon;

describe('children’s names', () => {
  test('one to a line, or parted by commas or cells; none empty, and two of one name are two', () => {
    expect(parseNames(' Tam,  Mary  Ann\n\nNate; Tam\r\n7,')).toEqual([
      'Tam',
      'Mary Ann',
      'Nate',
      'Tam',
    ]);
    expect(parseNames('Tam\tNate\tJ. M.')).toEqual(['Tam', 'Nate', 'J. M.']);
    expect(parseNames('')).toEqual([]);
    expect(parseNames('\u202eTam\u0000\u200f\nN\u0007ate')).toEqual(['Tam', 'Nate']);
    expect(parseNames('O’Ryan\nJosé')).toEqual(['O’Ryan', 'José']);
  });

  // How these names are said: common knowledge, no source.
  test('are heard as they are said, of the word list or by their letters', () => {
    const said = (name: string) =>
      soundedNames([name], lexicon).map(({ sounds }) => sounds?.join(' ') ?? null);
    expect(said('Zan')).toEqual(['Z AE N']);
    expect(said('Tate')).toEqual(['T EY T']);
    expect(said('Grace')).toEqual(['G R EY S']);
  });

  test('a longer name that no list knows is known by its letters alone', () => {
    expect(soundedNames(['Zorimella', 'José'], lexicon)).toEqual([
      { name: 'Zorimella', sounds: null },
      { name: 'José', sounds: null },
    ]);
  });
});
