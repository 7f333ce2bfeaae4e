import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { builtLexicon } from '../../test/built-lexicon.ts';
import { readAs } from '../words/decodable.ts';
import { lexiconHere } from '../words/lexicon-here.ts';
import { SEQUENCE } from './built-in.ts';
import { builtInHere, isBuiltIn, progressHere, progressListed } from './order-here.ts';
import { addItem, dropItem, makeProgress, taughtOf } from './progress.ts';

const BRITISH = ['southern-british'] as const;
const words = SEQUENCE.steps.flatMap(({ items }) => items.filter(({ kind }) => kind === 'word'));

describe('our order where southern British is set', () => {
  it('spells the words known by heart as there, and they are read so', () => {
    const all = taughtOf(progressHere(makeProgress(SEQUENCE, SEQUENCE.steps.length), BRITISH));
    const lexicon = lexiconHere(builtLexicon, BRITISH);
    for (const word of ['colour', 'favourite', 'honour']) {
      expect(all.irregularWords).toContain(word);
      expect(readAs(lexicon.indexOf(word), lexicon, all)).toEqual({ kind: 'by-heart' });
    }
    expect(all.irregularWords).not.toContain('color');
  });

  it('is our own, and the same each time', () => {
    expect(builtInHere(BRITISH)).toBe(builtInHere(BRITISH));
    expect([builtInHere(BRITISH), SEQUENCE].every(isBuiltIn)).toBe(true);
    expect(builtInHere(['pin-pen'])).toBe(SEQUENCE);
  });

  it('stores every place as it was', () => {
    const some = fc.subarray(words, { maxLength: 6 });
    fc.assert(
      fc.property(fc.nat(SEQUENCE.steps.length), some, some, (step, added, dropped) => {
        const place = dropped.reduce(dropItem, added.reduce(addItem, makeProgress(SEQUENCE, step)));
        expect(progressListed(progressHere(place, BRITISH))).toEqual(place);
      }),
      { numRuns: 20 },
    );
  });

  it('leaves an order of her own as she wrote it', () => {
    const own = makeProgress({ name: 'Ours', steps: SEQUENCE.steps }, 94);
    expect(progressHere(own, BRITISH)).toBe(own);
    expect(progressListed(own)).toBe(own);
  });
});
