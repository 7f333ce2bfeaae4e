import { describe, expect, test } from 'vitest';
import { builtLexicon } from '../../../test/built-lexicon.ts';
import { makePlainScreen } from '../../../test/plain-screen.ts';
import type { CardId } from '../../language/card-id.ts';
import { CORRESPONDENCES } from '../../language/correspondences.ts';
import { HABITS, type Habit } from '../../language/taught.ts';
import { judgeWord } from '../judge/judge.ts';
import type { JudgeContext } from '../judge/judge-context.ts';
import { shapeById } from './shape-list.ts';

function context(habits: readonly Habit[] = HABITS): JudgeContext {
  return {
    taught: {
      correspondences: new Set(CORRESPONDENCES.map(({ id }) => id)),
      habits: new Set(habits),
      irregularWords: new Set(),
    },
    lexicon: builtLexicon,
    screen: makePlainScreen(['lun', 'bosting']),
  };
}

/** What a row of cards is in a shape; spellings and classes by hand, from the rules' own words. */
function judged(shape: string, row: string, habits?: readonly Habit[]): string {
  const built = judgeWord(row.split(' ') as CardId[], context(habits), shapeById.get(shape));
  return `${built.word} ${built.kind === 'stopped' ? built.reason.code : built.kind}`;
}

describe('longer words', () => {
  test('the vowel before consonant-le follows its syllable: ta·ble, ti·ble, tib·ble', () => {
    expect(judged('consonant-le', 't=T a=EY b=B le=AX+L')).toBe('table real');
    expect(judged('consonant-le', 'b=B u=AH bb=B le=AX+L')).toBe('bubble real');
    expect(judged('consonant-le', 'h=HH a=AE nd=N+D le=AX+L')).toBe('handle real');
    expect(judged('consonant-le', 't=T i=AY b=B le=AX+L')).toBe('tible nonsense');
    expect(judged('consonant-le', 't=T i=IH bb=B le=AX+L')).toBe('tibble nonsense');
    expect(judged('consonant-le', 't=T i=IH b=B le=AX+L')).toBe('tible rule');
    expect(judged('consonant-le', 't=T i=AY bb=B le=AX+L')).toBe('tibble rule');
    expect(judged('consonant-le', 't=T a=AE b=B le=AX+L')).toBe('table said-differently');
  });

  test('two syllables are real as the word list reads them, a faded vowel only where it may be flexed', () => {
    expect(judged('closed-closed', 'n=N a=AE p=P k=K i=IH n=N')).toBe('napkin real');
    expect(judged('doubled', 'r=R a=AE bb=B i=IH t=T')).toBe('rabbit real');
    expect(judged('open-closed', 'p=P i=AY l=L o=AA t=T')).toBe('pilot real');
    const unflexed = HABITS.filter((habit) => habit !== 'schwa' && habit !== 'flex');
    expect(judged('open-closed', 'p=P i=AY l=L o=AA t=T', unflexed)).toBe('pilot said-differently');
    expect(judged('doubled', 'r=R a=AE bb=B i=IH t=T', [])).toBe('rabbit untaught');
  });

  test('nonsense of two syllables is legal in each and where they meet', () => {
    expect(judged('closed-closed', 'm=M o=AA b=B d=D i=IH p=P')).toBe('mobdip nonsense');
    // the same letter twice; a digraph read across the joint; two ways to divide
    expect(judged('closed-closed', 'm=M o=AA b=B b=B i=IH p=P')).toBe('mobbip rule');
    expect(judged('closed-closed', 'm=M o=AA t=T h=HH i=IH p=P')).toBe('mothip rule');
    expect(judged('closed-closed', 'm=M o=AA p=P l=L i=IH d=D')).toBe('moplid rule');
    expect(judged('open-closed', 'v=V o=OW d=D i=IH b=B')).toBe('vodib nonsense');
    expect(judged('doubled', 'v=V o=AA dd=D i=IH b=B')).toBe('voddib nonsense');
  });

  test('a syllable that would be stopped alone stops nonsense, not a real word', () => {
    expect(judged('closed-closed', 'l=L u=AH n=N d=D i=IH p=P')).toBe('lundip screened');
    expect(judged('closed-closed', 'b=B o=AA s=S t=T i=IH ng=NG')).toBe('bosting screened');
  });

  // National Curriculum in England, English Appendix 1: Spelling (DfE 2013), Year 1: adding -s, -es,
  // -ed, -ing, -er and -est where no change is needed; Year 2: doubling and dropping e.
  test('an ending is added where the base does not change, and is illegal where it does', () => {
    for (const [row, wanted] of [
      ['c=K a=AE t=T s=S', 'cats real'],
      ['c=K a=AE t=T s=Z', 'cats said-differently'],
      ['b=B o=AA x=K+S es=IH+Z', 'boxes real'],
      ['j=JH u=AH mp=M+P ed=T', 'jumped real'],
      ['j=JH u=AH mp=M+P ing=IH+NG', 'jumping real'],
      ['f=F a=AE st=S+T est=AX+S+T', 'fastest real'],
      ['z=Z o=AA ft=F+T ing=IH+NG', 'zofting nonsense'],
      ['z=Z o=AA ft=F+T ed=IH+D', 'zofted nonsense'],
      ['z=Z o=AA ft=F+T ed=T', 'zofted rule'],
      ['v=V i=IH p=P ing=IH+NG', 'viping rule'],
      ['v=V i=IH sh=SH s=S', 'vishs rule'],
      ['v=V i=IH p=P es=IH+Z', 'vipes rule'],
      ['z=Z a=AE n=N ed=D', 'zaned rule'],
    ] as const) {
      expect(`${row}: ${judged('base-ending', row)}`).toBe(`${row}: ${wanted}`);
    }
  });

  test('a cluster of single cards asks for its habit', () => {
    expect(judged('ccvc', 's=S t=T o=AA p=P')).toBe('stop real');
    expect(judged('ccvc', 't=T s=S o=AA p=P')).toBe('tsop rule');
    expect(judged('ccvc', 's=S t=T o=AA p=P', ['r-clusters'])).toBe('stop untaught');
    expect(judged('ccvcc', 's=S t=T a=AE m=M p=P')).toBe('stamp real');
  });
});
