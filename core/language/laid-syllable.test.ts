import { describe, expect, it } from 'vitest';
import type { Correspondence } from './correspondence.ts';
import { correspondenceById } from './correspondences.ts';
import { afterCoda, afterOnset, laySyllable, soundsOf, spellingOf } from './laid-syllable.ts';

function lay(cards: string) {
  return laySyllable(
    cards.split(' ').map((id) => correspondenceById.get(id as never) as Correspondence),
  );
}

function laid(cards: string) {
  const syllable = lay(cards);
  if (!syllable) throw new Error(`${cards} is no syllable`);
  return syllable;
}

describe('cards laid as a syllable', () => {
  it.each([
    ['c=K a=AE t=T', 'cat', 'K AE T'],
    ['str=S+T+R i=IH p=P', 'strip', 'S T R IH P'],
    ['m=M a_e=EY k=K', 'make', 'M EY K'],
    ['t=T a_e=EY s=S t=T', 'taste', 'T EY S T'],
    ['b=B a=AE nk=NG+K', 'bank', 'B AE NG K'],
    ['a=AE t=T', 'at', 'AE T'],
  ])('%s is %s, said %s', (cards, spelling, sounds) => {
    expect(spellingOf(laid(cards))).toBe(spelling);
    expect(soundsOf(laid(cards)).join(' ')).toBe(sounds);
  });

  it('opens clusters on both sides of the vowel', () => {
    const { onset, vowel, coda } = laid('str=S+T+R i=IH nk=NG+K');
    expect(onset.map(({ id }) => id)).toEqual(['s=S', 't=T', 'r=R']);
    expect(vowel.id).toBe('i=IH');
    expect(coda.map(({ grapheme }) => grapheme).join('')).toBe('nk');
  });

  it.each(['s=S t=T', 'a=AE t=T i=IH', 'a=AE i=IH'])(
    '%s is none: it has not one vowel',
    (cards) => {
      expect(lay(cards)).toBeNull();
    },
  );

  it('says what letters follow a card, across the vowel and to the e of a split card', () => {
    const strike = laid('str=S+T+R i_e=AY k=K');
    expect([0, 1, 2].map((index) => afterOnset(strike, index))).toEqual(['tri', 'ri', 'i']);
    expect(afterCoda(strike, 0)).toBe('e');
    const taste = laid('t=T a_e=EY s=S t=T');
    expect([0, 1].map((index) => afterCoda(taste, index))).toEqual(['te', 'e']);
    expect(afterCoda(laid('c=K a=AE t=T'), 0)).toBe('');
  });
});
