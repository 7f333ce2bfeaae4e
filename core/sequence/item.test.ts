import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CORRESPONDENCES } from '../language/correspondences.ts';
import { HABITS } from '../language/taught.ts';
import { itemKey, makeItem, makeItems, parseItem, splitItems } from './item.ts';
import type { Item } from './sequence.ts';

const anyItem: fc.Arbitrary<Item> = fc.oneof(
  fc.constantFrom(...CORRESPONDENCES).map(({ id }): Item => ({ kind: 'card', id })),
  fc.constantFrom(...HABITS).map((habit): Item => ({ kind: 'habit', habit })),
  fc.stringMatching(/^[a-z]{1,9}$/).map((word): Item => ({ kind: 'word', word })),
);

describe('the text form of an item', () => {
  test('reads back as the same item', () => {
    fc.assert(
      fc.property(anyItem, (item) => {
        expect(parseItem(makeItem(item))).toEqual({ item });
      }),
    );
  });

  test('survives in a list', () => {
    fc.assert(
      fc.property(fc.array(anyItem), (items) => {
        const read = splitItems(makeItems(items)).map(parseItem);
        expect(read).toEqual(items.map((item) => ({ item })));
      }),
    );
  });

  test('is short where a grapheme says its first sound', () => {
    expect(makeItem({ kind: 'card', id: 'sh=SH' })).toBe('sh');
    expect(makeItem({ kind: 'card', id: 'c=S' })).toBe('c=S');
  });

  test('different items have different keys', () => {
    expect(itemKey({ kind: 'word', word: 'a' })).not.toBe(itemKey({ kind: 'card', id: 'a=AE' }));
  });
});

describe('reading an item', () => {
  // Common practice: the sound that letters say first in every scope and sequence.
  test.each([
    ['u', 'u=AH'],
    ['i', 'i=IH'],
    ['c', 'c=K'],
    ['ce', 'ce=S'],
    ['th', 'th=TH'],
    ['ou', 'ou=AW'],
    ['qu', 'qu=K+W'],
    ['sc', 'sc=S+K'],
    ['st', 'st=S+T'],
    ['nk', 'nk=NG+K'],
    ['a_e', 'a_e=EY'],
  ])('%s alone means %s', (text, id) => {
    expect(parseItem(text)).toEqual({ item: { kind: 'card', id } });
  });

  test.each([
    ['SH', 'sh=SH'],
    [' ea = eh ', 'ea=EH'],
    ['a-e', 'a_e=EY'],
    ['-ck', 'ck=K'],
    ['bl-', 'bl=B+L'],
    ['b=-', 'b=-'],
  ])('%s is forgiven and means %s', (text, id) => {
    expect(parseItem(text)).toEqual({ item: { kind: 'card', id } });
  });

  test('words and habits are told by their prefix, a habit also by its name', () => {
    expect(parseItem('Word: Said')).toEqual({ item: { kind: 'word', word: 'said' } });
    expect(parseItem('word:don’t')).toEqual({ item: { kind: 'word', word: "don't" } });
    expect(parseItem('habit:schwa')).toEqual({ item: { kind: 'habit', habit: 'schwa' } });
    expect(parseItem('long-words')).toEqual({ item: { kind: 'habit', habit: 'long-words' } });
  });

  test('what is unknown comes back as it was written, with what may have been meant', () => {
    expect(parseItem('shh')).toEqual({
      error: {
        code: 'unknown-card',
        item: 'shh',
        nearMisses: ['sh', 'shr', 'word:shh'],
        message: 'We know no card “shh”. Did you mean sh, shr or word:shh?',
      },
    });
    expect(parseItem('habit:magic')).toMatchObject({ error: { code: 'unknown-habit' } });
    expect(parseItem('word:')).toMatchObject({ error: { code: 'not-a-word' } });
    expect(parseItem('word:two words')).toMatchObject({ error: { code: 'not-a-word' } });
  });

  test.each(['constructor', '__proto__', 'toString', '', '=', 'a=', '=AE', 'word:__proto__'])(
    '“%s” is an error and not an accident',
    (text) => {
      expect(parseItem(text)).toHaveProperty('error');
    },
  );
});
