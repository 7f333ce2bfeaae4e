import { describe, expect, it } from 'vitest';
import type { CardId } from '../language/card-id.ts';
import { contrastChoices } from './contrasts.ts';

const among = (...ids: readonly CardId[]) =>
  contrastChoices({ correspondences: new Set(ids) }).map((pair) => pair.join(' '));

// Reversible letters and short e and i are the usual mix-ups: common practice, no source.
describe('the look-alikes that a run can turn one into the other', () => {
  it('are those both of which were taught', () => {
    expect(among('b=B', 'd=D', 'e=EH', 'a=AE')).toEqual(['b=B d=D', 'a=AE e=EH']);
    expect(among('b=B', 'i=IH')).toEqual([]);
  });

  it('leave out a vowel beside a consonant, the same letters, and the same sound', () => {
    expect(among('i=IH', 'l=L', 'oo=UW', 'oo=UH', 'er=ER', 'ir=ER')).toEqual([]);
  });
});
