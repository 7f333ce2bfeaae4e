import { describe, expect, test } from 'vitest';
import { builtLexicon } from '../../../test/built-lexicon.ts';
import { readAs } from '../../words/decodable.ts';
import { SEQUENCE } from '../built-in.ts';
import { makeItems, splitItems } from '../item.ts';
import { itemNamed } from '../item-named.ts';
import type { Step } from '../sequence.ts';
import { teach } from '../teach.ts';
import { offeredEndings } from './offered-endings.ts';

/** An order of these lines. */
function order(...lines: readonly string[]): readonly Step[] {
  return lines.map((line, place) => ({
    number: place + 1,
    stage: '',
    grade: '1',
    title: line,
    items: splitItems(line).map(itemNamed),
    why: '',
  }));
}

const LETTERS = 'a b c d e f g h i k l m n o p r s s=Z t u habit:long-words habit:r-clusters';
const offers = (...lines: readonly string[]) =>
  offeredEndings(order(...lines)).map(({ rule, items, step }) => [rule, makeItems(items), step]);

describe('what an ending does to a word', () => {
  test.each<[string, readonly string[], readonly (readonly [string, string, number])[]]>([
    ['silent e, then -ing', [LETTERS, 'a_e', 'o_e', 'ing'], [['drop the e', 'a=EY o=OW', 4]]],
    ['-ing before silent e', [LETTERS, 'ing', 'a_e'], [['drop the e', 'a=EY', 3]]],
    ['open syllables are there', [LETTERS, 'a_e', 'ing', 'a=EY'], []],
    ['no ending', ['a', 'a_e'], []],
    ['no silent e', [LETTERS, 'ing'], []],
    ['y and -ed', [LETTERS, 'y=AY', 'ed'], [['y to i', 'ie=AY', 2]]],
    ['both sounds of y', [LETTERS, 'y=AY y=IY'], [['y to i', 'ie=AY ie', 2]]],
    ['ie is there', [LETTERS, 'y=AY', 'ie=AY'], []],
  ])('%s', (_, lines, wanted) => {
    expect(offers(...lines)).toEqual(wanted);
  });

  test('is offered by words that are read with it, and not without', () => {
    const steps = order(LETTERS, 'a_e o_e ng', 'y=AY y=IY ed ed=D');
    const before = steps.flatMap(({ items }) => items);
    const reads = (word: string, items: typeof before) =>
      readAs(builtLexicon.indexOf(word), builtLexicon, teach(items)) !== null;
    for (const { example, besides, items } of offeredEndings(steps)) {
      for (const word of `${example}, ${besides}`.split(', ')) {
        expect(reads(word, before), word).toBe(false);
        expect(reads(word, [...before, ...items]), word).toBe(true);
      }
    }
  });

  test('our own order lacks none', () => {
    expect(offeredEndings(SEQUENCE.steps)).toEqual([]);
  });
});
