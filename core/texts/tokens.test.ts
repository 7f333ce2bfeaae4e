import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { tokensOf } from './tokens.ts';

describe('tokens', () => {
  it('joined give back the text', () => {
    const text = '“Don’t run,” said Sam’s mum. 3 well-fed cats sat…\n\nThe boys’ dog, too!';
    expect(
      tokensOf(text)
        .map((token) => token.text)
        .join(''),
    ).toBe(text);
  });

  it('joined give back any text whatever', () => {
    const pieces = fc.constantFrom(
      'a',
      'Z',
      'é',
      '’',
      "'",
      ' ',
      '  ',
      '.',
      '3',
      '-',
      '—',
      '\n',
      'ʼ',
      '😀',
    );
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 30 }), (all) => {
        const text = all.join('');
        expect(
          tokensOf(text)
            .map((token) => token.text)
            .join(''),
        ).toBe(text);
      }),
    );
  });

  it('take contractions and possessives whole, hyphens apart, numbers as numbers', () => {
    const words = tokensOf('Don’t feed Sam’s 3 well-fed cats, the boys’ cats.')
      .filter(({ kind }) => kind === 'word')
      .map(({ word }) => word);
    expect(words).toEqual([
      "don't",
      'feed',
      "sam's",
      'well',
      'fed',
      'cats',
      'the',
      "boys'",
      'cats',
    ]);
  });

  it('do not take a closing quote for a possessive', () => {
    const words = tokensOf("He said 'stop'.").map(({ word }) => word);
    expect(words).toContain('stop');
  });
});

/** The tokens of a text in short: numbers with #, what stands between in <>, capitals inside a sentence with ^. */
const inShort = (text: string) =>
  tokensOf(text).map((token) => {
    if (token.kind === 'word') return `${token.capital ? '^' : ''}${token.word}`;
    expect([token.word, token.capital]).toEqual(['', false]);
    return token.kind === 'number' ? `#${token.text}` : `<${token.text}>`;
  });

test.each<[text: string, tokens: readonly string[]]>([
  ['', []],
  ['A az AZ Za', ['a', '< >', 'az', '< >', '^az', '< >', '^za']],
  ['Then Bob ran', ['then', '< >', '^bob', '< >', 'ran']],
  [
    'He ran. Bob ran! So? Yes',
    ['he', '< >', 'ran', '<. >', 'bob', '< >', 'ran', '<! >', 'so', '<? >', 'yes'],
  ],
  [
    'Hi, Bob; and Jo: Al\nEd',
    ['hi', '<, >', '^bob', '<; >', 'and', '< >', '^jo', '<: >', 'al', '<\n>', 'ed'],
  ],
  ['“No,” said Bob, “Yes”', ['<“>', 'no', '<,” >', 'said', '< >', '^bob', '<, “>', 'yes', '<”>']],
  ['he said "Yes', ['he', '< >', 'said', '< ">', 'yes']],
  ['at 3 Bob', ['at', '< >', '#3', '< >', '^bob']],
  ['3 Bobs', ['#3', '< >', '^bobs']],
  ['on the 3rd, 1,000.5', ['on', '< >', 'the', '< >', '#3rd', '<, >', '#1,000.5']],
  ['x1', ['x', '#1']],
  ['Élan été Été', ['élan', '< >', 'été', '< >', '^été']],
  [
    'O’Brien saw O’Brien’s and o’Brien',
    ["o'brien", '< >', 'saw', '< >', "^o'brien's", '< >', 'and', '< >', "o'brien"],
  ],
  ["the boys' dog", ['the', '< >', "boys'", '< >', 'dog']],
  ["the BOYS' dog", ['the', '< >', "^boys'", '< >', 'dog']],
  ["say 'it's' now", ['say', "< '>", "it's", "<'>", '< >', 'now']],
  ['cat  sat', ['cat', '<  >', 'sat']],
  ['cat é', ['cat', '< >', 'é']],
  ['cat ', ['cat', '< >']],
  ['cafe\u0301', ['café']],
  ['a\x7fb', ['a', '<\x7f>', 'b']],
])('“%s” is cut into its tokens', (text, tokens) => {
  expect(inShort(text)).toEqual(tokens);
});

test('a word reads the same by the short way for plain letters and by the long one', () => {
  const word = fc.stringMatching(/^[A-Za-z]{1,5}$/);
  fc.assert(
    fc.property(fc.array(word, { minLength: 1, maxLength: 6 }), (words) => {
      const plain = tokensOf(`x ${words.join(' ')}`);
      // An accent after it sends each word the long way; it is taken off again.
      const long = tokensOf(`x ${words.map((one) => `${one}\u0302q`).join(' ')}`);
      expect(long.map(({ kind, capital }) => [kind, capital])).toEqual(
        plain.map(({ kind, capital }) => [kind, capital]),
      );
    }),
  );
});
