import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readFixture } from '../../test/fixture.ts';
import { MASTERY_WORDS, masteryWord, PUBLISHED_THRESHOLDS } from './mastery-word.ts';

const share = fc.double({ min: 0, max: 1, noNaN: true });

describe('the word for an estimate', () => {
  const criteria = readFixture('mastery-criteria.tsv');
  const quoted = (criterion: string): string =>
    criteria.find((row) => row.criterion === criterion)?.value ?? '';

  it('begins where the state guide and the phonics check have it', () => {
    // “mastery >=80% correct; approaching 60-79%; intervention <=59%”: teksguide.org, TEKS 2(2)(B)(iii).
    const [, mastery, approaching, intervention] =
      /mastery >=(\d+)%.*approaching (\d+)-79%.*intervention <=(\d+)%/.exec(
        quoted('decoding inventory by syllable type'),
      ) ?? [];
    expect(PUBLISHED_THRESHOLDS.secure).toBe(Number(mastery) / 100);
    expect(PUBLISHED_THRESHOLDS.shaky).toBe(Number(approaching) / 100);
    expect(masteryWord({ p: Number(intervention) / 100, low: 0.4, n: 10 })).toBe('shaky');
    // “32 of 40 (80%)”: Standards and Testing Agency, phonics screening check 2019.
    const [, right, of] = /(\d+) of (\d+)/.exec(quoted('phonics screening check threshold')) ?? [];
    expect(PUBLISHED_THRESHOLDS.secure).toBe(Number(right) / Number(of));
  });

  it('is not secure for an estimate of 80% itself, which was seen not to last', () => {
    // “80% deteriorated at follow-up; 90% and 100% maintained”: Longino et al. 2021, abstract.
    expect(quoted('accuracy over three consecutive sessions')).toContain('80% deteriorated');
    expect(masteryWord({ p: 0.8, low: 0.7, n: 20 })).toBe('growing');
    expect(masteryWord({ p: 0.9, low: 0.8, n: 20 })).toBe('secure');
  });

  it('is “not yet seen” where nothing was read, whatever the estimate', () => {
    fc.assert(
      fc.property(share, share, (p, low) => {
        expect(masteryWord({ p, low, n: 0 })).toBe('not yet seen');
      }),
    );
  });

  it('never gets worse for a higher estimate, or milder for higher thresholds', () => {
    const rank = (word: string) => ['shaky', 'growing', 'secure'].indexOf(word);
    fc.assert(
      fc.property(share, share, share, (p, less, secure) => {
        const [low, high] = [Math.min(p, less), Math.max(p, less)];
        const thresholds = { secure, shaky: secure / 2 };
        const worse = masteryWord({ p: low, low, n: 5 }, thresholds);
        const better = masteryWord({ p: high, low: high, n: 5 }, thresholds);
        expect(rank(better)).toBeGreaterThanOrEqual(rank(worse));
        const strict = masteryWord({ p, low: p, n: 5 }, { secure: 1, shaky: 1 });
        expect(rank(strict)).toBeLessThanOrEqual(
          rank(masteryWord({ p, low: p, n: 5 }, thresholds)),
        );
      }),
    );
  });

  it('has no other words', () => {
    expect(MASTERY_WORDS).toEqual(['secure', 'growing', 'shaky', 'not yet seen']);
  });
});
