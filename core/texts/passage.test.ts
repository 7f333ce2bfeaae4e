import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { builtLexicon } from '../../test/built-lexicon.ts';
import type { Taught } from '../language/taught.ts';
import { SEQUENCE } from '../sequence/built-in.ts';
import { parseTaught } from '../sequence/taught-text.ts';
import { judgePassage, stepForShare } from './passage.ts';
import { tokensOf } from './tokens.ts';

function taught(text: string): Taught {
  const parsed = parseTaught(text, SEQUENCE);
  if ('error' in parsed) throw new Error(parsed.error.message);
  return parsed.taught;
}

const letters = taught('a,c,d,e,g,h,i,m,n,o,p,r,s,t,u,th=DH,word:the');

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
    expect(because.ship).toEqual(['sh=SH']);
    expect(because.said).toEqual(['irregular:ai=EH']);
    expect(passage.irregular).toEqual(['said']);
  });

  it('says that a word is unknown, and guesses it by its letters', () => {
    const passage = judgePassage('Zog sat in a grompf.', letters, builtLexicon, SEQUENCE);
    expect(passage.unknown.map(({ word }) => word).sort()).toEqual(['grompf', 'zog']);
    expect(passage.judged.get('zog')?.because).toEqual(['z=Z']);
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
