import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { builtLexicon } from '../../test/built-lexicon.ts';
import type { CardId } from '../language/card-id.ts';
import { isHabit, type Taught } from '../language/taught.ts';
import { SEQUENCE } from '../sequence/built-in.ts';
import type { Item, Sequence } from '../sequence/sequence.ts';
import { parseTaught } from '../sequence/taught-text.ts';
import { taughtUpTo } from '../sequence/teach.ts';
import { type Because, judgePassage, stepForShare } from './passage.ts';

function taught(text: string): Taught {
  const parsed = parseTaught(text, SEQUENCE);
  if ('error' in parsed) throw new Error(parsed.error.message);
  return parsed.taught;
}

const letters = taught('a,c,d,e,g,h,i,m,n,o,p,r,s,t,u,th=DH,word:the');

describe('a judged text', () => {
  it('counts running and distinct words, and what can be read', () => {
    const passage = judgePassage(
      'The cat sat. The cat ran to the ship.',
      letters,
      builtLexicon,
      SEQUENCE,
    );
    expect(passage.words).toBe(9);
    expect(passage.distinct).toBe(6);
    expect(passage.blocked.map(({ word }) => word).sort()).toEqual(['ship', 'to']);
    expect(passage.share).toBeCloseTo(7 / 9, 12);
  });

  it('says why a word is blocked', () => {
    const passage = judgePassage('ship said', letters, builtLexicon, SEQUENCE);
    const because = Object.fromEntries(passage.blocked.map((word) => [word.word, word.because]));
    expect(because.ship).toEqual([{ kind: 'card', id: 'sh=SH' }]);
    expect(because.said).toEqual([{ kind: 'irregular', id: 'ai=EH' }]);
    expect(passage.irregular).toEqual(['said']);
  });

  it('says that a word is unknown, and guesses it by its letters', () => {
    const passage = judgePassage('Zog sat in a grompf.', letters, builtLexicon, SEQUENCE);
    expect(passage.unknown.map(({ word }) => word).sort()).toEqual(['grompf', 'zog']);
    expect(passage.judged.get('zog')?.because).toEqual([{ kind: 'card', id: 'z=Z' }]);
  });

  it('has a share that never falls from step to step, and at the end counts every taught word', () => {
    const passage = judgePassage(
      'The ship had a red flag and said nothing.',
      letters,
      builtLexicon,
      SEQUENCE,
    );
    for (const [step, share] of passage.shareByStep.entries()) {
      if (step > 0) expect(share).toBeGreaterThanOrEqual(passage.shareByStep[step - 1] as number);
    }
    expect(stepForShare(passage, 0)).toBe(0);
    expect(stepForShare(passage, 2)).toBeNull();
  });

  it('without words is wholly readable', () => {
    expect(judgePassage(' 12, 14. ', letters, builtLexicon, SEQUENCE).share).toBe(1);
  });
});

/** A short order: one item a step, in this order. */
function order(...items: readonly Item[]): Sequence {
  const steps = items.map(
    (item, at) =>
      ({ number: at + 1, stage: 'one', grade: 'K', title: '', items: [item], why: '' }) as const,
  );
  return { name: 'short', steps };
}
const card = (id: CardId): Item => ({ kind: 'card', id });
const byHeart = (word: string): Item => ({ kind: 'word', word });
const SHORT = order(
  card('m=M'),
  card('a=AE'),
  card('t=T'),
  card('s=S'),
  byHeart('said'),
  card('l=L'),
  { kind: 'habit', habit: 'ending-clusters' },
  byHeart("don't"),
  card('i=IH'),
  byHeart('mat'),
);

describe('the step of a word', () => {
  test.each<[word: string, step: number | null, why: string]>([
    ['at', 3, 'the latest of its cards'],
    ['mast', 7, 'its habit comes after its cards'],
    ['salt', null, 'a card of it is in no step'],
    ['ship', null, 'cards of it are in no step'],
    ['said', 5, 'it is learned by heart'],
    ['was', null, 'it is irregular and learned by no step'],
    ['mat', 3, 'its cards come before it is learned by heart'],
    ["it's", 9, 'a contraction opens with its base'],
    ["cat's", null, 'its base has none'],
    ["don't", 8, 'an irregular contraction is learned by heart'],
    ["won't", null, 'it is irregular and learned by no step'],
  ])('%s: %s, since %s', (word, step) => {
    const all = taughtUpTo(SHORT, 99);
    const passage = judgePassage(word, all, builtLexicon, SHORT);
    expect(passage.judged.get(word)?.step).toBe(step);
    expect(passage.shareByStep).toHaveLength(11);
    expect(stepForShare(passage, 1)).toBe(step);
  });

  it('is none while no step teaches a habit that it asks for', () => {
    const letters = order(card('m=M'), card('a=AE'), card('s=S'), card('t=T'));
    const { judged } = judgePassage('mast mat', taughtUpTo(letters, 4), builtLexicon, letters);
    expect(judged.get('mast')?.step).toBeNull();
    expect(judged.get('mat')?.step).toBe(4);
  });

  it('is the first at which it can be read: any words, any step, each judged again', () => {
    const word = fc.nat(builtLexicon.size - 1).map((index) => builtLexicon.word(index));
    const built = fc.constantFrom(
      "don't",
      "can't",
      "it's",
      "we've",
      "won't",
      "girls'",
      'zog',
      'Flimp',
    );
    const words = fc.array(fc.oneof(word, built), { minLength: 1, maxLength: 25 });
    const upTo = fc.nat(SEQUENCE.steps.length);
    fc.assert(
      fc.property(words, upTo, (some, step) => {
        const text = some.join(' ');
        const passage = judgePassage(text, taughtUpTo(SEQUENCE, step), builtLexicon, SEQUENCE);
        for (const { decodable, because, step: opens } of passage.judged.values()) {
          expect(decodable).toBe(opens !== null && opens <= step);
          expect(because.length === 0).toBe(decodable);
        }
        expect(passage.shareByStep[step]).toBeCloseTo(passage.share, 12);
        expect(passage.shareByStep).toHaveLength(SEQUENCE.steps.length + 1);
      }),
      { numRuns: 40 },
    );
  });
});

describe('why a word is blocked', () => {
  test.each<[word: string, taught: string, because: readonly Because[]]>([
    ['mast', 'm,a,s,t', [{ kind: 'habit', habit: 'ending-clusters' }]],
    ['mast', 'm,a,s,t,ending-clusters', []],
    [
      'flimp',
      'f,i,m',
      [
        { kind: 'card', id: 'l=L' },
        { kind: 'card', id: 'p=P' },
        { kind: 'habit', habit: 'l-clusters' },
        { kind: 'habit', habit: 'ending-clusters' },
      ],
    ],
    ['qxq', 'm', [{ kind: 'unknown' }]],
    ["don't", 'd,n,t,word:do', [{ kind: 'irregular-word', word: "don't" }]],
    [
      "don't",
      'd',
      [
        { kind: 'irregular', id: 'o=UW' },
        { kind: 'irregular-word', word: "don't" },
      ],
    ],
    ["don't", "d,word:don't", []],
    ["it's", 'i', [{ kind: 'card', id: 't=T' }]],
    ["it's", 'i,t', []],
    [
      'colonel',
      'c,o,e',
      [
        { kind: 'irregular', id: 'o=-' },
        { kind: 'irregular', id: 'l=-' },
        { kind: 'irregular', id: 'o=?ER' },
        { kind: 'habit', habit: 'long-words' },
      ],
    ],
  ])('%s when %s were taught: %j', (word, known, because) => {
    // A list of cards brings the habits about length along; here, those named are the only ones.
    const habits = new Set(known.split(',').filter(isHabit));
    const group = { ...taught(known), habits };
    const judged = judgePassage(word, group, builtLexicon, SEQUENCE).judged.get(word);
    expect(judged?.because).toEqual(expect.arrayContaining([...because]));
    if (word !== 'colonel') expect(judged?.because).toHaveLength(because.length);
    expect(judged?.decodable).toBe(because.length === 0);
  });
});

describe('how a word came to be judged', () => {
  test.each<[text: string, word: string, source: string, irregular: boolean, name: boolean]>([
    ['the cat', 'cat', 'list', false, false],
    ['we said', 'said', 'list', true, false],
    ['the Cat', 'cat', 'list', false, false],
    ["it's", "it's", 'built', false, false],
    ["I don't", "don't", 'built', true, false],
    ["they weren't", "weren't", 'built', true, false],
    ['I met Flimp', 'flimp', 'guess', false, true],
    ['I met flimp', 'flimp', 'guess', false, false],
    ['I met Flimp, a flimp', 'flimp', 'guess', false, false],
    ['I met Flimp and Flimp', 'flimp', 'guess', false, true],
    ['I met Qxq', 'qxq', 'guess', false, true],
  ])('in “%s”, %s', (text, word, source, irregular, name) => {
    const judged = judgePassage(text, letters, builtLexicon, SEQUENCE).judged.get(word);
    expect(judged).toMatchObject({ source, irregular, name });
  });

  it('words come commonest first, then by the alphabet', () => {
    const { blocked, irregular } = judgePassage(
      'zip said zip quiz box was said said quiz fox zip was',
      letters,
      builtLexicon,
      SEQUENCE,
    );
    expect(blocked.map(({ word }) => word)).toEqual(['said', 'zip', 'quiz', 'was', 'box', 'fox']);
    expect(irregular).toEqual(['said', 'was']);
  });
});

describe('a text without words', () => {
  it('is wholly readable at every step', () => {
    const { shareByStep } = judgePassage('12', letters, builtLexicon, SHORT);
    expect(shareByStep).toEqual(new Array(11).fill(1));
  });
});
