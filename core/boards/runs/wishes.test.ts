import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { builtLexicon } from '../../../test/built-lexicon.ts';
import {
  beginnings,
  boards,
  checkRun,
  contrastsIn,
  contrastTurnsIn,
  endings,
  sparseBoards,
  tableOf,
  vowels,
  wholeBoard,
} from '../../../test/run-boards.ts';
import type { CardId } from '../../language/card-id.ts';
import { mayShow, outcomeAt } from '../judge/word-table.ts';
import type { Flip } from '../shapes/board.ts';
import { mostContrastTurns } from './contrast-turns.ts';
import { makeRunGraph } from './graph.ts';
import { makeRun } from './run.ts';

describe('words of the last days', () => {
  const table = tableOf([beginnings.slice(0, 10), vowels.slice(0, 5), endings.slice(0, 9)]);

  test('do not come while the board has others', () => {
    const avoid = new Set<string>();
    for (let day = 0; day < 3; day++) {
      const asked = { flips: 30, realShare: 0.5, seed: day, avoid: new Set(avoid) };
      const { flips, missing } = makeRun(table, asked, builtLexicon);
      expect([missing.flips, missing.real, missing.fresh]).toEqual([0, 0, 0]);
      for (const { word } of flips) {
        expect(avoid.has(word)).toBe(false);
        avoid.add(word);
      }
    }
  });

  test('come again when nothing else is left: the run is as long as if they had not been', () => {
    const small = tableOf([beginnings.slice(0, 4), vowels.slice(0, 3), endings.slice(0, 3)]);
    const shown = new Set(small.words.filter((_, at) => mayShow(small, at)));
    for (let seed = 0; seed < 10; seed++) {
      const asked = { flips: 12, realShare: 0.5, seed };
      const before = makeRun(small, asked, builtLexicon);
      const again = makeRun(small, { ...asked, avoid: shown }, builtLexicon);
      expect(again.flips.length).toBe(before.flips.length);
      expect(again.missing.fresh).toBe(again.flips.length);
    }
  });

  test('come again only as many as it takes', () => {
    // Words that differ in their beginning alone: every order of them is a run.
    const row = tableOf([beginnings, ['a=AE'], ['t=T']]);
    const words = row.words.filter((_, at) => mayShow(row, at));
    for (let left = 1; left < words.length; left++) {
      const avoid = new Set(words.slice(left));
      const flips = Math.min(words.length, left + 2);
      const isReal = (word: string) => outcomeAt(row, row.words.indexOf(word)) !== 'nonsense';
      const realShare = words.slice(0, flips).filter(isReal).length / flips;
      const { missing } = makeRun(row, { flips, realShare, seed: left, avoid }, builtLexicon);
      expect(missing.flips).toBe(0);
      expect(missing.fresh).toBe(flips - left);
    }
  });
});

describe('focus cards', () => {
  test('come in exactly the share of flips that was asked, beside the share of real words', () => {
    const shares = fc.constantFrom(0.2, 0.4, 0.5, 0.7);
    const cards = fc.constantFrom<readonly string[]>(
      ['sh=SH'],
      ['e=EH'],
      ['a_e=EY', 'i_e=AY'],
      ['ck=K', 'b=B'],
    );
    fc.assert(
      fc.property(cards, shares, fc.integer(), (focus, focusShare, seed) => {
        const asked = { flips: 30, realShare: 0.5, seed, focus, focusShare };
        const { flips, missing } = makeRun(wholeBoard, asked, builtLexicon);
        const focused = flips.filter(({ cards: ids }) => ids.some((id) => focus.includes(id)));
        expect(focused).toHaveLength(Math.round(30 * focusShare));
        expect([missing.flips, missing.real, missing.focused]).toEqual([0, 0, 0]);
        checkRun(flips, wholeBoard.piles);
      }),
      { numRuns: 24 },
    );
  });

  test('come in all flips or none when that is asked', () => {
    for (const focusShare of [0, 1]) {
      const asked = { flips: 20, realShare: 0.5, seed: 3, focus: ['i=IH'], focusShare };
      const { flips } = makeRun(wholeBoard, asked, builtLexicon);
      expect(flips).toHaveLength(20);
      for (const { cards } of flips) expect(cards.includes('i=IH')).toBe(focusShare === 1);
    }
  });

  test('that no word has are missing, and the run is as long all the same', () => {
    const asked = { flips: 30, realShare: 0.5, seed: 3, focus: ['zz=Z'], focusShare: 0.5 };
    const { flips, missing } = makeRun(wholeBoard, asked, builtLexicon);
    expect([flips.length, missing.focused]).toEqual([30, -15]);
  });
});

describe('cards that are to come often enough', () => {
  test('are shown in at least that share of the flips, and real words keep theirs', () => {
    for (let seed = 0; seed < 20; seed++) {
      const atLeast = { cards: ['e=EH'] as const, share: 0.4 };
      const asked = { flips: 30, realShare: 0.5, seed, atLeast };
      const { flips, missing } = makeRun(wholeBoard, asked, builtLexicon);
      const shown = flips.filter(({ cards }) => cards.includes('e=EH')).length;
      expect(shown).toBeGreaterThanOrEqual(12);
      expect([missing.flips, missing.real, missing.due]).toEqual([0, 0, 0]);
      checkRun(flips, wholeBoard.piles);
    }
  });

  test('are counted as missing where the board has too few words of them', () => {
    fc.assert(
      fc.property(
        sparseBoards,
        fc.integer({ min: 1, max: 12 }),
        fc.integer(),
        (table, many, seed) => {
          const cards = (table.piles[0] ?? []).slice(0, 1);
          const asked = { flips: many, realShare: 0.5, seed, atLeast: { cards, share: 0.4 } };
          const { flips, missing, score } = makeRun(table, asked, builtLexicon);
          const shown = flips.filter(({ cards: ids }) =>
            ids.some((id) => cards.includes(id)),
          ).length;
          expect(missing.due).toBe(Math.max(0, Math.ceil(flips.length * 0.4) - shown));
          expect(score.reached).toBeLessThanOrEqual(score.bound);
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('look-alikes side by side', () => {
  const contrasts: readonly (readonly [CardId, CardId])[] = [
    ['b=B', 'd=D'],
    ['e=EH', 'i=IH'],
  ];

  test('each pair is turned one into the other, and in a third of the flips some pair is', () => {
    for (let seed = 0; seed < 25; seed++) {
      const asked = { flips: 30, realShare: 0.5, seed, contrasts };
      const { flips, missing } = makeRun(wholeBoard, asked, builtLexicon);
      // b and d lie among the beginnings and among the endings, e and i among the vowels.
      expect([seed, contrastsIn(flips, contrasts), missing.contrasts]).toEqual([seed, 3, 0]);
      expect(contrastTurnsIn(flips, contrasts)).toBeGreaterThanOrEqual(10);
      expect(missing.contrastTurns).toBe(0);
      expect([missing.flips, missing.real]).toEqual([0, 0]);
    }
  });

  test('minimal pairs of three are: pin, pen, pan', () => {
    const three = [
      ['e=EH', 'i=IH'],
      ['a=AE', 'e=EH'],
      ['a=AE', 'i=IH'],
    ] as const;
    const { flips, missing } = makeRun(
      wholeBoard,
      { flips: 30, realShare: 0.5, seed: 4, contrasts: three },
      builtLexicon,
    );
    expect(contrastTurnsIn(flips, three)).toBeGreaterThanOrEqual(10);
    expect(missing.contrasts).toBe(0);
  });

  test('no run turns look-alikes more often than the bound says, and what is missing is counted', () => {
    fc.assert(
      fc.property(
        sparseBoards,
        fc.integer({ min: 1, max: 12 }),
        fc.integer(),
        (table, many, seed) => {
          const asked = { flips: many, realShare: 0.5, seed, contrasts };
          const graph = makeRunGraph(table, asked, builtLexicon);
          const { flips, missing } = makeRun(table, asked, builtLexicon);
          const turns = contrastTurnsIn(flips, contrasts);
          expect(turns).toBeLessThanOrEqual(mostContrastTurns(graph, graph, flips.length));
          const third = flips.length < 2 ? 0 : Math.ceil(flips.length / 3);
          expect(missing.contrastTurns).toBe(Math.max(0, third - turns));
        },
      ),
      { numRuns: 100 },
    );
  });
});

describe('a run that rises', () => {
  const mean = (flips: readonly Flip[]): number =>
    flips.reduce((sum, { sounds }) => sum + sounds.length, 0) / flips.length;

  test('has more sounds to a word in its last third than in its first', () => {
    let higher = 0;
    for (let seed = 0; seed < 20; seed++) {
      const asked = { flips: 30, realShare: 0.5, seed, rise: true };
      const { flips } = makeRun(wholeBoard, asked, builtLexicon);
      checkRun(flips, wholeBoard.piles);
      if (mean(flips.slice(20)) > mean(flips.slice(0, 10))) higher++;
    }
    expect(higher).toBeGreaterThanOrEqual(19);
  });

  test('is as long as another where the board has twice as many words as flips', () => {
    fc.assert(
      fc.property(boards, fc.integer(), ({ table }, seed) => {
        const shown = new Set(table.words.filter((_, at) => mayShow(table, at))).size;
        const asked = { flips: Math.max(1, shown >> 1), realShare: 0.5, seed };
        const level = makeRun(table, asked, builtLexicon);
        const rising = makeRun(table, { ...asked, rise: true }, builtLexicon);
        expect(rising.flips.length).toBeGreaterThanOrEqual(level.flips.length);
      }),
      { numRuns: 60 },
    );
  });
});
