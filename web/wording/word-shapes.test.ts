import { describe, expect, it } from 'vitest';
import { findWords } from '../../core/words/finder.ts';
import { builtLexicon } from '../../test/built-lexicon.ts';
import { SHAPE_NAMES } from './word-shapes.ts';

// The examples are common practice, no source.
describe('the shapes a teacher can ask for', () => {
  it.each(SHAPE_NAMES)('$name brings $example', ({ shape, example }) => {
    const found = findWords(builtLexicon, { shape }).map((index) => builtLexicon.word(index));
    expect(found).toContain(example);
  });
});
