import { describe, expect, it } from 'vitest';
import type { CardId } from '../language/card-id.ts';
import { contrastChoices, contrastThrees, pairsAmong } from './contrasts.ts';

const among = (...ids: readonly CardId[]) =>
  contrastChoices({ correspondences: new Set(ids) }).map((pair) => pair.join(' '));

// Reversible letters and short e and i are the usual mix-ups: common practice, no source.
describe('the look-alikes that a run can turn one into the other', () => {
  it('are those both of which were taught', () => {
    expect(among('b=B', 'd=D', 'e=EH', 'a=AE')).toEqual(['b=B d=D', 'a=AE e=EH']);
    expect(among('b=B', 'i=IH')).toEqual([]);
  });

  it('are a short vowel and the same letter with silent e too', () => {
    expect(among('a=AE', 'a_e=EY', 'i_e=AY')).toEqual(['a=AE a_e=EY']);
  });

  it('leave out a vowel beside a consonant, the same letters, and the same sound', () => {
    expect(among('i=IH', 'l=L', 'oo=UW', 'oo=UH', 'er=ER', 'ir=ER')).toEqual([]);
  });
});

describe('look-alikes in threes', () => {
  it('are offered once all three were taught, and make three pairs', () => {
    const taught = (ids: readonly CardId[]) => ({ correspondences: new Set(ids) });
    expect(contrastThrees(taught(['a=AE', 'i=IH']))).toEqual([]);
    expect(contrastThrees(taught(['a=AE', 'i=IH', 'e=EH']))).toEqual([['i=IH', 'e=EH', 'a=AE']]);
    expect(pairsAmong(['i=IH', 'e=EH', 'a=AE'])).toEqual([
      ['i=IH', 'e=EH'],
      ['i=IH', 'a=AE'],
      ['e=EH', 'a=AE'],
    ]);
    expect(pairsAmong(['b=B', 'd=D'])).toEqual([['b=B', 'd=D']]);
  });
});
