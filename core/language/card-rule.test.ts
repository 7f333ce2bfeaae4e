import { describe, expect, it } from 'vitest';
import type { CardId } from './card-id.ts';
import { cardRule } from './card-rule.ts';
import { CORRESPONDENCES, correspondenceById } from './correspondences.ts';

/** What is to be said stands in England's National Curriculum, English Appendix 1, Years 1 and 2 (DfE 2013). */
const published: readonly (readonly [CardId, RegExp])[] = [
  ['ck=K', /short vowel.*ck/],
  ['tch=CH', /short vowel.*tch/],
  ['dge=JH', /short vowel.*dge/],
  ['ff=F', /short vowel.*ff, ll, ss or zz/],
  ['k=K', /before e, i|there/],
  ['c=S', /e, i or y/],
  ['g=JH', /e, i or y/],
  ['ai=EY', /inside/],
  ['ay=EY', /end/],
  ['v=V', /\/v\/ is ve/],
  ['a=AA', /after w/],
];

describe('the rule said with a card', () => {
  it.each(published)('%s', (id, says) => {
    expect(cardRule(correspondenceById.get(id)!)).toMatch(says);
  });

  it('is a whole sentence wherever there is one', () => {
    for (const card of CORRESPONDENCES) {
      const rule = cardRule(card);
      if (rule !== null) expect(rule).toMatch(/^[A-Zac-z].*\.$/);
    }
  });

  it('is there for the cards that children misspell', () => {
    for (const id of [
      'ck=K',
      'qu=K+W',
      'x=K+S',
      'le=AX+L',
      'st=S+T',
      'ing=IH+NG',
      'ee=IY',
    ] satisfies readonly CardId[]) {
      expect(cardRule(correspondenceById.get(id)!), id).not.toBeNull();
    }
  });
});
