import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { builtLexicon } from '../../../test/built-lexicon.ts';
import { decodableWords } from '../../words/decodable.ts';
import { SEQUENCE } from '../built-in.ts';
import { makeItem, makeItems } from '../item.ts';
import { makeSequenceCsv } from '../sequence-csv.ts';
import { parseTaught } from '../taught-text.ts';
import { taughtUpTo } from '../teach.ts';
import { readOrder, writeInstead } from './read-order.ts';
import { makeVocabulary } from './vocabulary.ts';

const vocabulary = makeVocabulary(builtLexicon);
const read = (text: string) => readOrder(text, { vocabulary, notYet: ALL_HABITS });
const ALL_HABITS = new Set([
  'ending-clusters',
  's-clusters',
  'l-clusters',
  'r-clusters',
  'three-clusters',
  'long-words',
]);
const itemsOf = (text: string) => read(text).sequence.steps.map(({ items }) => makeItems(items));

describe('a line as teachers write it', () => {
  test.each([
    ['t – the', ['t word:the']],
    ['t - the', ['t word:the']],
    ['a, the', ['a word:the']],
    ['does, they', ['word:does word:they']],
    ['sight words: said of', ['word:said word:of']],
    ['ch as in chin', ['ch']],
    ['th as in feather', ['th=DH']],
    ['th (voiced)', ['th=DH']],
    ['ea as in bread', ['ea=EH']],
    ['ow as in how', ['ow=AW']],
    ['a-e', ['a_e']],
    ['aCe', ['a_e']],
    ['-ck', ['ck']],
    ['soft c', ['c=S ce']],
    ['Soft G', ['g=JH ge']],
    ['short a', ['a']],
    ['long o', ['o=OW']],
    ['schwa', ['habit:schwa a=AX']],
    ['two syllables', ['habit:long-words']],
    ['closed syllables', ['habit:long-words']],
    ['l blends', ['habit:l-clusters']],
    ['ending blends', ['habit:ending-clusters']],
    ['silent e', ['a_e e_e i_e o_e u_e u_e=Y+UW']],
    ['doubling', ['bb dd gg mm nn pp tt']],
    ['drop the e', ['a=EY i=AY o=OW u=UW u=Y+UW']],
    ['change the y to i', ['ie=AY ie']],
    ['-ed', ['ed ed=D ed=IH+D']],
    ['ff, ll, ss, zz', ['ff ll ss zz']],
    ['ang, ink', ['a ng i nk']],
    ['1. m', ['m']],
    ['Lesson 3: sh', ['sh']],
    ['ea=EH word:said', ['ea=EH word:said']],
    ['sh and ch', ['sh ch']],
  ])('%s', (text, items) => {
    expect(itemsOf(text)).toEqual(items);
    expect(read(text).lines.flatMap(({ pieces }) => pieces.map(({ kind }) => kind))).not.toContain(
      'unknown',
    );
  });

  test('a part with a meaning is understood and teaches no card', () => {
    for (const text of ['un-', '-ful', 'pre-']) {
      const [line] = read(text).lines;
      expect(line?.pieces.map(({ kind }) => kind)).toEqual(['items']);
      expect(line?.step).toBeNull();
    }
  });

  test.each([
    ['th', 'th as in thumb or feather?'],
    ['ow', 'ow as in snow or cow?'],
    ['are', 'are as in square, or the word are?'],
  ])('%s asks', (text, question) => {
    const { lines, sequence } = read(text);
    expect(lines[0]?.pieces).toMatchObject([{ kind: 'asks', question: { asks: question } }]);
    expect(sequence.steps).toEqual([]);
  });

  test('the second time means the second sound, without a question', () => {
    expect(itemsOf('c\nth as in thumb\nth\nc\ns\ns\no\no')).toEqual([
      'c',
      'th',
      'th=DH',
      'c=S ce',
      's',
      's=Z',
      'o',
      'o=OW',
    ]);
  });

  test('a wrong piece says what may be meant, and the rest of the line stays', () => {
    const { lines } = read('sh hs');
    expect(lines[0]?.pieces).toMatchObject([
      { kind: 'items' },
      { kind: 'unknown', written: 'hs', nearMisses: expect.arrayContaining(['sh']) },
    ]);
    expect(itemsOf('sh hs')).toEqual(['sh']);
  });
});

describe('stages and tables', () => {
  test('a heading begins a stage; a line may carry its own', () => {
    const text = 'First sounds:\nm\ns\nUnit 2\nsh\n# More\nVowel teams: ai ay';
    expect(read(text).sequence.steps.map(({ stage, title }) => [stage, title])).toEqual([
      ['First sounds', 'm'],
      ['First sounds', 's'],
      ['Unit 2', 'sh'],
      ['More', 'Vowel teams'],
    ]);
  });

  test('a spreadsheet is read by its columns', () => {
    const text = 'Week,Focus,Spellings\n1,Letters,"m, s"\n1,,a\n2,Digraph,sh';
    expect(itemsOf(text)).toEqual(['m s a', 'sh']);
  });

  test('our own file is taken to the letter and asks nothing', () => {
    const draft = readOrder(makeSequenceCsv(SEQUENCE), { vocabulary, name: SEQUENCE.name });
    expect(draft.sequence).toEqual(SEQUENCE);
    expect(draft.assumed).toEqual([]);
  });

  test('never throws, whatever is pasted, and numbers its steps from 1', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const { sequence } = readOrder(text, { vocabulary });
        expect(sequence.steps.map(({ number }) => number)).toEqual(
          sequence.steps.map((_, place) => place + 1),
        );
      }),
    );
  });
});

describe('a plain list', () => {
  const letters = 'm s a t p i n d o g c k e u r h b f l j v w x y z qu';
  const more = 'ff ll ss zz sh ch ck ng ai ay ee oa igh a_e i_e o_e ar or er';
  const items = [...letters.split(' '), ...more.split(' ')];

  test('opens at its end what the same items open as a list', () => {
    const typed = parseTaught(items.join(','), SEQUENCE);
    if ('error' in typed) throw new Error(typed.error.message);
    const { sequence } = readOrder(items.join('\n'), { vocabulary, firstSense: true });
    const open = (taught: typeof typed.taught) => decodableWords(builtLexicon, taught).length;
    expect(open(taughtUpTo(sequence, sequence.steps.length))).toBe(open(typed.taught));
  });

  test('offers clusters with the last of the letters, longer words with what shows them', () => {
    const { assumed } = readOrder([...items, 'bb dd'].join('\n'), { vocabulary });
    const at = new Map(assumed.map(({ habit, step }) => [habit, step]));
    expect(at.get('s-clusters')).toBe(letters.split(' ').length);
    expect(at.get('long-words')).toBe(items.length + 1);
  });

  test('a cluster on a line brings its habit there, the others with the last of such lines', () => {
    const { assumed } = readOrder(`${letters.replaceAll(' ', '\n')}\nst sp\nbl fl`, { vocabulary });
    const at = new Map(assumed.map(({ habit, step }) => [habit, step]));
    const count = letters.split(' ').length;
    expect(at.get('s-clusters')).toBe(count + 1);
    expect(at.get('l-clusters')).toBe(count + 2);
    expect(at.get('r-clusters')).toBe(count + 2);
  });

  test('what is said to come later is not assumed', () => {
    const { sequence } = readOrder('m\na\nt', { vocabulary, notYet: ALL_HABITS });
    expect(sequence.steps.flatMap((step) => step.items.map(makeItem))).toEqual(['m', 'a', 't']);
  });
});

describe('an answer', () => {
  test('is written into the line that asked, and into no other piece', () => {
    const text = 'the thumb\nsh, th, the\nth';
    expect(writeInstead(text, 2, 'th', 'th as in thumb')).toBe(
      'the thumb\nsh, th as in thumb, the\nth',
    );
    expect(itemsOf(writeInstead('th', 1, 'th', 'th as in thumb, th as in feather'))).toEqual([
      'th th=DH',
    ]);
  });

  test('once written it asks no more', () => {
    for (const letters of ['th', 'oo', 'ow', 'ea', 'ie', 'ear', 'are', 'our', 'a\na']) {
      const { lines } = read(letters);
      const line = lines.find(({ pieces }) => pieces.some(({ kind }) => kind === 'asks'));
      const piece = line?.pieces.find((each) => each.kind === 'asks');
      if (!line || piece?.kind !== 'asks') throw new Error(`${letters} asks nothing`);
      for (const { writes, items } of piece.question.answers) {
        const answered = writeInstead(letters, line.line, piece.written, writes);
        expect(itemsOf(answered).at(-1)).toBe(makeItems(items));
      }
    }
  });
});
