import { describe, expect, test } from 'vitest';
import { builtLexicon } from '../../test/built-lexicon.ts';
import { SEQUENCE } from '../sequence/built-in.ts';
import { parseTaught, parseTaughtJson } from '../sequence/taught-text.ts';
import { taughtUpTo } from '../sequence/teach.ts';
import { decodableWords, obstacles, readAs } from './decodable.ts';

/** What is taught by a list; only letters of which the habits about length come along. */
function taughtBy(list: string) {
  const parsed = parseTaught(list, SEQUENCE);
  if ('error' in parsed) throw new Error(parsed.error.message);
  return parsed.taught;
}

const LETTERS = 'a,b,c,d,e,f,g,h,i,j,k,l,m,n,o,p,qu,r,s,t,u,v,w,x,y,z,s=Z,ff,ll,ss,zz,ck,ng';
const MORE = `${LETTERS},sh,ch,th,th=DH,wh,a_e,i_e,o_e,u_e,ing,ed,ed=D,ed=IH+D,bb,dd,gg,mm,nn,pp,tt`;

const how = (word: string, list: string) =>
  readAs(builtLexicon.indexOf(word), builtLexicon, taughtBy(list));

describe('words that belong together', () => {
  // Which words a teacher would read with these: common practice, no source.
  test.each([
    ['doing', 'do', 'ing'],
    ['comes', 'come', 's'],
    ['friends', 'friend', 's'],
    ['wanted', 'want', 'ed'],
    ['called', 'call', 'ed'],
    ['moved', 'move', 'ed'],
    ['eyes', 'eye', 's'],
  ])('%s is a form of %s', (word, base, ending) => {
    expect(how(word, MORE)).toBeNull();
    expect(how(word, `${MORE},word:${base}`)).toEqual({ kind: 'form', of: base, ending });
  });

  test('a form needs its ending', () => {
    expect(how('friends', `${LETTERS.replace(',s=Z', '')},word:friend`)).toBeNull();
    expect(how('wanted', `${LETTERS},word:want`)).toBeNull();
  });

  test.each([
    ['without', 'with', 'out'],
    ['someone', 'some', 'one'],
    ['everyone', 'every', 'one'],
    ['somewhere', 'some', 'where'],
  ])('%s is %s and %s', (word, first, second) => {
    expect(how(word, MORE)).toBeNull();
    const list = `${MORE},word:${first},word:${second}`;
    expect(how(word, list)).toEqual({ kind: 'compound', parts: [first, second] });
    expect(how(word, `${MORE},word:${second === 'out' ? 'of' : second}`)).toBeNull();
  });

  test('a part may be a form itself, and a form be of a compound', () => {
    const ready = `${MORE},oy,word:friend,word:come,word:be,word:father,s=Z`;
    expect(how('boyfriends', MORE)).toBeNull();
    expect(how('boyfriends', ready)).not.toBeNull();
    expect(how('becomes', ready)).not.toBeNull();
    expect(how('grandfathers', ready)).not.toBeNull();
    expect(how('grandfathers', ready.replace(',word:father', ''))).toBeNull();
  });

  test.each([
    ['having', 've'],
    ['living', 've'],
  ])('%s needs the %s of its base', (word, card) => {
    expect(how(word, MORE)).toBeNull();
    expect(obstacles(builtLexicon.indexOf(word), builtLexicon, taughtBy(MORE))).toEqual([
      { kind: 'card', id: 've=V' },
    ]);
    expect(how(word, `${MORE},${card}`)).toEqual({ kind: 'cards' });
  });

  test('promised needs a final e that says nothing', () => {
    const noSilentE = MORE.replace(',a_e,i_e,o_e,u_e', '');
    expect(how('promised', noSilentE)).toBeNull();
    expect(how('promised', MORE)).toEqual({ kind: 'cards' });
  });

  test('egg, add and odd come with ff, ll and ss, not before', () => {
    for (const word of ['egg', 'add', 'odd']) {
      expect(how(word, LETTERS), word).toEqual({ kind: 'cards' });
      expect(how(word, 'a,o,e,d,g'), word).toBeNull();
    }
  });

  test('else, house, horse and please come with silent e and their own vowel', () => {
    for (const [word, vowel] of [
      ['else', 'e'],
      ['house', 'ou'],
      ['horse', 'or'],
      ['please', 'ea'],
    ] as const) {
      expect(how(word, `${LETTERS},${vowel}`), word).toBeNull();
      expect(how(word, `${LETTERS},a_e,${vowel}`), word).toEqual({ kind: 'cards' });
    }
  });
});

describe('flex', () => {
  const words = ['problem', 'button', 'basket', 'seven'];

  test('one faded vowel in a word of two beats is read with words of two beats', () => {
    for (const word of words) expect(how(word, MORE), word).toEqual({ kind: 'flexed' });
    expect(how('open', `${MORE},o=OW`)).toEqual({ kind: 'flexed' });
  });

  test('its short vowel must be known, for that is what is tried', () => {
    expect(how('problem', MORE.replace(',e,', ','))).toBeNull();
  });

  test('is no help where two vowels fade, or the first one does, or the last letter', () => {
    for (const word of ['about', 'banana', 'sofa', 'elephant']) {
      expect(how(word, `${MORE},ou,o=OW,ph`), word).toBeNull();
    }
  });

  test('stays out where it was taken out, until the vowel that fades is taught', () => {
    const at = (step: number) => {
      const parsed = parseTaughtJson(JSON.stringify({ step, drop: ['habit:flex'] }), SEQUENCE);
      if ('error' in parsed) throw new Error(parsed.error.message);
      return parsed.taught;
    };
    const index = builtLexicon.indexOf('basket');
    const schwa = SEQUENCE.steps.find(({ items }) =>
      items.some((item) => item.kind === 'habit' && item.habit === 'schwa'),
    )?.number as number;
    expect(readAs(index, builtLexicon, at(schwa - 1))).toBeNull();
    expect(readAs(index, builtLexicon, taughtUpTo(SEQUENCE, schwa - 1))).toEqual({
      kind: 'flexed',
    });
    expect(readAs(index, builtLexicon, at(schwa))).toEqual({ kind: 'cards' });
  });
});

test('the words that can be read are those that are read somehow, at every tenth step', () => {
  for (let step = 0; step <= SEQUENCE.steps.length; step += 10) {
    const taught = taughtUpTo(SEQUENCE, step);
    const naive: number[] = [];
    for (let index = 0; index < builtLexicon.size; index++) {
      if (readAs(index, builtLexicon, taught)) naive.push(index);
    }
    expect(decodableWords(builtLexicon, taught)).toEqual(naive);
  }
});
