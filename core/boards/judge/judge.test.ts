import { describe, expect, test } from 'vitest';
import { builtLexicon } from '../../../test/built-lexicon.ts';
import { makePlainScreen } from '../../../test/plain-screen.ts';
import type { CardId } from '../../language/card-id.ts';
import { CORRESPONDENCES } from '../../language/correspondences.ts';
import { heardAlike } from './heard-as-word.ts';
import { judgeWord } from './judge.ts';
import type { JudgeContext } from './judge-context.ts';

const everything: JudgeContext = {
  taught: {
    correspondences: new Set(CORRESPONDENCES.map(({ id }) => id)),
    habits: new Set(),
    irregularWords: new Set(),
  },
  lexicon: builtLexicon,
  screen: makePlainScreen(['zub'], ['gub']),
};

function judged(row: string, context = everything): string {
  const built = judgeWord(row.split(' ') as CardId[], context);
  return `${built.word} ${built.kind === 'stopped' ? built.reason.code : built.kind}`;
}

describe('judging a row of cards', () => {
  test('a word read as its cards say is real, whatever rule it breaks', () => {
    expect(judged('sh=SH i=IH p=P')).toBe('ship real');
    expect(judged('b=B a_e=EY k=K')).toBe('bake real');
    expect(judged('st=S+T r=R i=IH ng=NG')).toBe('string real');
    expect(judged('p=P i=IH nk=NG+K')).toBe('pink real');
    // Named by the National Curriculum as exceptions to the rule of doubling.
    for (const row of ['b=B u=AH s=S', 'y=Y e=EH s=S', 'p=P a=AE l=L']) {
      expect(judged(row)).toContain(' real');
    }
  });

  test('a cluster card reads as its letters do', () => {
    expect(judged('fl=F+L a=AE g=G')).toBe(judged('f=F l=L a=AE g=G'));
    expect(judged('b=B e=EH st=S+T')).toBe('best real');
  });

  test('a real word that is read otherwise is stopped', () => {
    expect(judged('w=W a=AE s=S')).toBe('was said-differently');
    expect(judged('h=HH a=AE s=S')).toBe('has said-differently');
    expect(judged('h=HH a=AE s=Z')).toBe('has real');
    expect(judged('k=K i=IH nd=N+D')).toBe('kind said-differently');
  });

  test('each of the readings of a word is real', () => {
    expect(judged('w=W i=IH nd=N+D')).toBe('wind real');
    expect(judged('r=R ea=IY d=D')).toBe('read real');
    expect(judged('r=R ea=EH d=D')).toBe('read real');
  });

  test('what sounds like a word spelled otherwise is stopped', () => {
    expect(judged('r=R a_e=EY n=N')).toBe('rane sound-alike');
    expect(judged('ph=F a=AE n=N')).toBe('phan sound-alike');
    expect(judged('d=D o=AA n=N')).not.toContain('nonsense');
    // cot and caught are one word to many: baut sounds like bot or bought.
    expect(judged('b=B au=AO t=T')).toBe('baut sound-alike');
  });

  test('a spelling rule stops what is no word, in its own words', () => {
    const built = judgeWord(['k=K', 'a=AE', 't=T'], everything);
    expect(built.kind === 'stopped' && built.reason).toEqual({
      code: 'rule',
      detail:
        'k is kept for e, i and y; before a, o, u or another consonant /k/ is spelled with c.',
    });
  });

  test('what the screen stops or asks about is stopped, with its reason', () => {
    expect(judged('z=Z u=AH b=B')).toBe('zub screened');
    const asked = judgeWord(['g=G', 'u=AH', 'b=B'], everything);
    expect(asked.kind === 'stopped' && asked.reason.detail).toBe('Yours to decide.');
  });

  test('a first name, and what children say as slang, is no nonsense', () => {
    expect(judged('b=B e=EH n=N')).toBe('ben name');
    expect(judged('f=F a=AE m=M')).toBe('fam name');
  });

  test('one card that was not taught stops a row, even a real word', () => {
    const taught = {
      ...everything.taught,
      correspondences: new Set<CardId>(['sh=SH', 'i=IH', 'n=N']),
    };
    expect(judged('sh=SH i=IH n=N', { ...everything, taught })).toBe('shin real');
    const built = judgeWord(['sh=SH', 'i=IH', 'p=P'], { ...everything, taught });
    expect(built.kind === 'stopped' && built.reason).toEqual({
      code: 'untaught',
      detail: 'p was not taught yet.',
    });
  });

  test('all else is nonsense', () => {
    for (const row of ['m=M e=EH b=B', 'dr=D+R i=IH st=S+T', 'v=V oi=OY n=N', 'p=P i_e=AY b=B']) {
      expect(judged(row)).toContain(' nonsense');
    }
  });

  test('an unknown card or a row without one vowel is a defect', () => {
    expect(() => judged('zz=Q a=AE t=T')).toThrow('no card');
    expect(() => judged('b=B t=T')).toThrow('one vowel');
  });
});

test('vowels that many say alike are heard alike, but not before r', () => {
  expect(heardAlike(['K', 'AA', 'T'])).toEqual(['K AA T', 'K AO T']);
  expect(heardAlike(['K', 'AO', 'R'])).toEqual(['K AO R']);
  expect(heardAlike(['AX', 'B', 'AH'])).toHaveLength(4);
});
