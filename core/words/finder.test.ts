import { describe, expect, it } from 'vitest';
import { builtLexicon } from '../../test/built-lexicon.ts';
import type { CardId } from '../language/card-id.ts';
import type { Taught } from '../language/taught.ts';
import { decodableWords, obstacles } from './decodable.ts';
import { findWords, minimalPairs } from './finder.ts';
import { parseShape, shapeOf } from './word-shape.ts';

const taught: Taught = {
  correspondences: new Set(
    's=S a=AE t=T p=P i=IH n=N m=M e=EH sh=SH a_e=EY k=K'.split(' ') as CardId[],
  ),
  habits: new Set(),
  irregularWords: new Set(['said']),
};

const words = (indexes: readonly number[]) => indexes.map((index) => builtLexicon.word(index));

describe('words that can be read', () => {
  it('are those that the plain judgment of each reading gives', () => {
    const naive: number[] = [];
    for (let index = 0; index < builtLexicon.size; index++) {
      if (obstacles(index, builtLexicon, taught).length === 0) naive.push(index);
    }
    expect(words(decodableWords(builtLexicon, taught))).toEqual(words(naive));
  });

  it('hold irregular words only when they were taught whole', () => {
    const found = words(decodableWords(builtLexicon, taught));
    expect(found).toContain('said');
    expect(found).not.toContain('was');
  });

  it('ask for the habit where consonants stand in a row', () => {
    const found = words(decodableWords(builtLexicon, taught));
    expect(found).toContain('mat');
    expect(found).not.toContain('mast');
  });
});

describe('the finder', () => {
  it('narrows by shape, by a card in its place and by syllables', () => {
    const closed = words(findWords(builtLexicon, { taught, shape: 'cvc' }));
    expect(closed).toContain('ship');
    expect(closed).not.toContain('shape');
    const endings = words(
      findWords(builtLexicon, { taught, card: { id: 'sh=SH', place: 'ending' } }),
    );
    expect(endings).toContain('mash');
    expect(endings).not.toContain('ship');
    const long = findWords(builtLexicon, { syllables: 3 });
    expect(long.every((index) => builtLexicon.syllableCount(index) === 3)).toBe(true);
  });

  it('pairs words that differ in the two cards alone', () => {
    const pool = findWords(builtLexicon, { taught, shape: 'cvc' });
    const pairs = minimalPairs(builtLexicon, pool, 'i=IH', 'e=EH').map((pair) => words(pair));
    expect(pairs).toContainEqual(['pin', 'pen']);
    for (const [left, right] of pairs) expect(left?.replace('i', 'e')).toBe(right);
  });
});

describe('shapes', () => {
  it.each([
    ['ship', 'cvc'],
    ['stop', 'ccvc'],
    ['make', 'cvce'],
    ['rain', 'cvvc'],
    ['car', 'cvr'],
    ['go', 'cv'],
  ])('%s is %s', (word, shape) => {
    expect(shapeOf(builtLexicon.cardIds(builtLexicon.indexOf(word)))).toBe(shape);
  });

  it('are read in capitals too, and refused without a vowel', () => {
    expect(parseShape(' CVC ')).toBe('cvc');
    expect(parseShape('ccc')).toBeNull();
    expect(parseShape('cat')).toBeNull();
  });
});
