import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { builtLexicon as lexicon } from '../../test/built-lexicon.ts';
import { tryForms } from '../../test/form-trial.ts';
import { SEQUENCE } from '../sequence/built-in.ts';
import { taughtUpTo } from '../sequence/teach.ts';
import { SCREEN_DATA } from '../words/screen-data.ts';
import { createWordScreen } from '../words/word-screen.ts';
import { CHECK_KINDS, type CheckForm, type CheckKind } from './check-form.ts';
import { compareScores, comparisonSaid } from './difference.ts';
import { makeLetterForm } from './letter-form.ts';
import { makeNonsenseForm } from './nonsense-form.ts';
import { makeSightForm } from './sight-form.ts';

const screen = createWordScreen(SCREEN_DATA);
const COUNT = 30;
const seeds = [1, 2, 3, 4];
const taughtAt = (step: number) => taughtUpTo(SEQUENCE, step);
/** Forms as docs/checks.md tells of; the more was taught, the more the cards of two forms are others. */
const forms: Readonly<Record<CheckKind, readonly (readonly CheckForm[])[]>> = {
  'nonsense-words': [60].map((step) =>
    seeds.map((seed) => {
      return makeNonsenseForm({ taught: taughtAt(step), lexicon, screen }, seed, COUNT).form;
    }),
  ),
  'letter-sounds': [60, 120].map((step) =>
    seeds.map((seed) => makeLetterForm(taughtAt(step), seed, COUNT).form),
  ),
  'sight-words': [60, 120].map((step) =>
    seeds.map((seed) => makeSightForm(taughtAt(step), seed, COUNT, lexicon).form),
  ),
};

/** A class in the middle of what checks are for: some 11 to 27 of 30 right. */
const MIDDLES = [1, 2, 3];

/** The correlation between two forms of 30 items in a class, as docs/checks.md states it. */
const RELIABILITY = {
  'nonsense-words': 0.88,
  'letter-sounds': 0.8,
  'sight-words': 0.8,
} as const;

/** The least difference that means something between two checks of so many items each. */
function leastOf(kind: CheckKind, asked: number): number {
  const score = { asked, right: 0 };
  return compareScores(kind, score, score)?.least ?? Number.NaN;
}

describe('what a difference of two checks means', () => {
  test.each(CHECK_KINDS)(
    'of %s is at most as wide as stated: nine of ten of those by chance are smaller',
    (kind) => {
      const trials = MIDDLES.flatMap((middle) =>
        forms[kind].flatMap((some) =>
          [11, 12].map((seed) => tryForms({ forms: some, seed, middle })),
        ),
      );
      const stated = leastOf(kind, COUNT);
      for (const { nineOfTen } of trials) expect(nineOfTen).toBeLessThanOrEqual(stated);
      const reliability = trials.reduce((sum, trial) => sum + trial.reliability, 0) / trials.length;
      expect(Math.abs(reliability - RELIABILITY[kind])).toBeLessThan(0.05);
    },
  );

  it.each(CHECK_KINDS)('is six of thirty %s', (kind) => {
    expect(leastOf(kind, 30)).toBe(6);
  });

  it.each([
    [
      24,
      30,
      21,
      30,
      '3 of 30 more right than before, which may be chance. Two forms differ by chance: it means something from 6 of 30 on.',
    ],
    [
      27,
      30,
      20,
      30,
      '7 of 30 more right than before, more than chance. Two forms differ by chance: it means something from 6 of 30 on.',
    ],
    [
      12,
      30,
      21,
      30,
      '9 of 30 fewer right than before, more than chance. Two forms differ by chance: it means something from 6 of 30 on.',
    ],
    [
      20,
      30,
      20,
      30,
      'As many right as before. Two forms differ by chance: it means something from 6 of 30 on.',
    ],
  ])('%i of %i after %i of %i', (right, asked, rightBefore, askedBefore, said) => {
    const compared = compareScores(
      'nonsense-words',
      { right, asked },
      { right: rightBefore, asked: askedBefore },
    );
    expect(compared && comparisonSaid(compared)).toBe(said);
  });

  it('asks for more where one of the two was short, and says nothing of nothing', () => {
    const now = { right: 24, asked: 30 };
    const short = compareScores('nonsense-words', now, { right: 6, asked: 10 });
    expect(short?.least).toBeGreaterThan(leastOf('nonsense-words', 30));
    expect(compareScores('nonsense-words', now, { right: 0, asked: 0 })).toBeNull();
  });

  it('is the same either way round for checks of one length', () => {
    const score = fc.nat(30).map((right) => ({ right, asked: 30 }));
    fc.assert(
      fc.property(score, score, (one, other) => {
        const there = compareScores('letter-sounds', one, other);
        const back = compareScores('letter-sounds', other, one);
        expect(there?.by).toBe(-(back?.by ?? Number.NaN) || 0);
        expect(there?.code === 'alike').toBe(back?.code === 'alike');
      }),
    );
  });
});
