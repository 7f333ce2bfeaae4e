import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findDelimiter, readCsv, writeCsv } from './csv-records.ts';

const cells = (text: string, delimiter: ',' | ';' | '\t' = ',') =>
  readCsv(text, delimiter).map((record) => record.cells);

describe('reading records', () => {
  // The examples of RFC 4180, section 2, rules 1, 5, 6 and 7 (from memory).
  test.each([
    [
      'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '"aaa","bbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'b\r\nbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    ['"aaa","b""bb","ccc"', [['aaa', 'b"bb', 'ccc']]],
  ])('%j is read as RFC 4180 has it', (text, expected) => {
    expect(cells(text)).toEqual(expected);
  });

  test('any line end, a byte-order mark and blank lines do no harm', () => {
    expect(cells('\uFEFFa,b\n\n\rc,d\r\n  \n')).toEqual([
      ['a', 'b'],
      ['c', 'd'],
    ]);
  });

  test('records know the line they begin on, after cells of several lines', () => {
    expect(readCsv('a\n"b\nb"\n\nc', ',').map(({ line }) => line)).toEqual([1, 2, 5]);
  });

  test('a quote that never closes costs no other line', () => {
    const records = readCsv('a,b\n"c,d\ne,f', ',');
    expect(records.map((record) => record.cells)).toEqual([
      ['a', 'b'],
      ['c', 'd'],
      ['e', 'f'],
    ]);
    expect(records.map((record) => record.openQuote)).toEqual([false, true, false]);
  });

  test('nor does one that closes only at the next line’s quote', () => {
    expect(cells('"a,b\n"c","d"')).toEqual([
      ['a', 'b'],
      ['c', 'd'],
    ]);
  });

  test('what was written is read back', () => {
    const row = fc.array(fc.string(), { minLength: 2, maxLength: 4 });
    const filled = row.filter((texts) => texts.join('').trim() !== '');
    fc.assert(
      fc.property(fc.array(filled), (rows) => {
        const clean = rows.map((texts) => texts.map((text) => text.replaceAll('\uFEFF', '')));
        expect(cells(writeCsv(clean))).toEqual(clean);
      }),
    );
  });
});

test.each([
  ['a,b\nc,d', ','],
  ['a\tb, c\nd\te', '\t'],
  ['a;b\nc;d, e', ';'],
  ['"a,b";c', ';'],
  ['a\nb', null],
])('the delimiter of %j is %j', (text, delimiter) => {
  expect(findDelimiter(text)).toBe(delimiter);
});
