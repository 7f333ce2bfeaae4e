import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CORRESPONDENCES } from '../language/correspondences.ts';
import { HABITS } from '../language/taught.ts';
import { SEQUENCE } from './built-in.ts';
import { makeItem } from './item.ts';
import { GRADES, type Item, type Sequence } from './sequence.ts';
import { makeSequenceCsv, parseSequenceCsv } from './sequence-csv.ts';

const anyItem: fc.Arbitrary<Item> = fc.oneof(
  fc.constantFrom(...CORRESPONDENCES).map(({ id }): Item => ({ kind: 'card', id })),
  fc.constantFrom(...HABITS).map((habit): Item => ({ kind: 'habit', habit })),
  fc.stringMatching(/^[a-z]{1,9}$/).map((word): Item => ({ kind: 'word', word })),
);
const anyText = fc
  .oneof(fc.string(), fc.stringMatching(/^[a-z ,;"\t\n]*$/))
  .map((text) => text.replaceAll('\uFEFF', '').trim());
const filledText = anyText.filter((text) => text !== '');

const anySequence: fc.Arbitrary<Sequence> = fc
  .array(
    fc.record({
      stage: filledText,
      grade: fc.constantFrom(...GRADES),
      title: filledText,
      items: fc.uniqueArray(anyItem, { minLength: 1, maxLength: 5, selector: makeItem }),
      why: anyText,
    }),
    { maxLength: 8 },
  )
  .map((steps) => ({
    name: 'Any',
    steps: steps.map((step, place) => ({ ...step, number: place + 1 })),
  }));

const itemsOf = (text: string) =>
  parseSequenceCsv(text).sequence.steps.map(({ items }) => items.map(makeItem));

describe('an order as CSV', () => {
  test('reads back as the same order, without a complaint', () => {
    fc.assert(
      fc.property(anySequence, (sequence) => {
        const read = parseSequenceCsv(makeSequenceCsv(sequence), sequence.name);
        expect(read).toEqual({ sequence, problems: [] });
      }),
    );
  });

  test('holds for our own order', () => {
    const read = parseSequenceCsv(makeSequenceCsv(SEQUENCE), SEQUENCE.name);
    expect(read).toEqual({ sequence: SEQUENCE, problems: [] });
  });

  test('never throws, whatever is pasted', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const { sequence } = parseSequenceCsv(text);
        expect(sequence.steps.every(({ items }) => items.length > 0)).toBe(true);
      }),
    );
  });
});

describe('pasted from elsewhere', () => {
  test.each([
    ['a single column', 'm\ns\na'],
    ['a column with a heading', 'Graphemes\nm\ns\na'],
    ['a spreadsheet, by tabs', 'step\ttitle\titems\n1\tFirst\tm\n2\tSecond\ts\n3\tThird\ta'],
    ['semicolons, Windows lines, a byte-order mark', '\uFEFFstep;items\r\n1;m\r\n2;s\r\n3;a\r\n'],
    ['no header, all columns', '1,Start,K,m,m\n2,Start,K,s,s\n3,Start,K,a,a'],
    ['no header, number and letters', '1,m\n2,s\n3,a'],
    ['no header, titles and letters', 'the m card,m\nthe s card,s\nthe a card,a'],
    ['quotes around every cell', '"step","items"\n"1","m"\n"2","s"\n"3","a"'],
    ['columns in another order', 'items,grade\nm,K\ns,K\na,K'],
  ])('%s', (_, text) => {
    expect(itemsOf(text)).toEqual([['m'], ['s'], ['a']]);
    expect(parseSequenceCsv(text).problems).toEqual([]);
  });

  test('a line of letters is one step', () => {
    expect(itemsOf('s,a,t\nsh ch')).toEqual([
      ['s', 'a', 't'],
      ['sh', 'ch'],
    ]);
  });

  test('lines in a row with one step number are one step', () => {
    const text = 'step,title,items\n1,Two sounds,ea\n1,,ea=EH\n2,Word,word:said';
    expect(itemsOf(text)).toEqual([['ea', 'ea=EH'], ['word:said']]);
  });

  test('stage and grade go on until they change; a title is made where none is', () => {
    const text = 'stage,grade,items\nStart,Kindergarten,m\n,,s\nNext,1st grade,sh ch';
    expect(parseSequenceCsv(text).sequence.steps).toMatchObject([
      { stage: 'Start', grade: 'K', title: 'm' },
      { stage: 'Start', grade: 'K', title: 's' },
      { stage: 'Next', grade: '1', title: 'sh, ch' },
    ]);
  });
});

describe('bad lines', () => {
  const text = [
    'step,stage,grade,title,items',
    '1,Start,K,m,m',
    '2,Start,K,oops,zq',
    '3,Start,K,half good,sh hs',
    '4,Start,K,nothing,',
    '5,Start,9,grade,ch',
    '7,Start,K,late,th',
    '6,Start,K,early,"wh"',
    '"8,Start,K,open,ng',
    '9,Start,K,end,habit:shwa',
  ].join('\r\n');
  const { sequence, problems } = parseSequenceCsv(text);

  test('leave every good item in place', () => {
    expect(sequence.steps.map(({ items }) => items.map(makeItem).join(' '))).toEqual([
      'm',
      'sh',
      'ch',
      'th',
      'wh',
      'ng',
    ]);
  });

  test('are each named by the line that an editor shows', () => {
    expect(problems.map(({ line, code }) => [line, code])).toEqual([
      [3, 'unknown-item'],
      [4, 'unknown-item'],
      [5, 'no-items'],
      [6, 'unknown-grade'],
      [8, 'steps-out-of-order'],
      [9, 'open-quote'],
      [10, 'unknown-item'],
    ]);
    expect(problems[1]?.text).toBe('3,Start,K,half good,sh hs');
  });

  test('come with a way to mend them', () => {
    expect(problems[1]?.mend).toContain('sh');
    expect(problems[6]?.mend).toContain('habit:schwa');
    for (const { message, mend } of problems) {
      expect(message).toMatch(/\.$/);
      expect(mend.length).toBeGreaterThan(10);
    }
  });

  test('a header without a column of items is one problem, not a hundred', () => {
    const read = parseSequenceCsv('step,title\n1,first\n2,second');
    expect(read.sequence.steps).toEqual([]);
    expect(read.problems).toMatchObject([{ line: 1, code: 'no-items-column' }]);
  });
});
