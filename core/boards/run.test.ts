import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { builtLexicon } from '../../test/built-lexicon.ts';
import { makePlainScreen } from '../../test/plain-screen.ts';
import { CORRESPONDENCES } from '../language/correspondences.ts';
import type { Flip } from './board.ts';
import { type JudgeContext, judgeWord } from './judge.ts';
import { makeRun } from './run.ts';
import { shapeById } from './shape-list.ts';
import type { Shape } from './shapes.ts';
import { makeWordTable, type WordTable } from './word-table.ts';

const context: JudgeContext = {
  taught: {
    correspondences: new Set(CORRESPONDENCES.map(({ id }) => id)),
    habits: new Set(),
    irregularWords: new Set(),
  },
  lexicon: builtLexicon,
  screen: makePlainScreen(['sit', 'map', 'bep'], ['tun']),
};

const beginnings =
  'b=B d=D f=F h=HH l=L m=M n=N p=P r=R s=S t=T w=W sh=SH ch=CH bl=B+L st=S+T tr=T+R'.split(' ');
const vowels = 'a=AE e=EH i=IH o=AA u=AH a_e=EY i_e=AY ee=IY'.split(' ');
const endings = 'b=B d=D g=G m=M n=N p=P t=T ck=K ss=S sh=SH k=K ng=NG nd=N+D st=S+T'.split(' ');

function tableOf(piles: readonly (readonly string[])[]): WordTable {
  return makeWordTable(shapeById.get('syllable') as Shape, piles, context);
}

const boards = fc
  .tuple(
    fc.subarray(beginnings, { minLength: 1, maxLength: 10 }),
    fc.subarray(vowels, { minLength: 1, maxLength: 5 }),
    fc.subarray(endings, { minLength: 1, maxLength: 10 }),
  )
  .map((piles) => ({ piles, table: tableOf(piles) }));

/** Everything that must hold of any run over these piles; written from the rules, not from run.ts. */
function checkRun(run: readonly Flip[], piles: readonly (readonly string[])[]): void {
  run.forEach((flip, at) => {
    flip.cards.forEach((id, pile) => {
      expect(piles[pile]).toContain(id);
    });
    const built = judgeWord(flip.cards, context);
    expect(built.kind).toBe(flip.kind);
    expect([flip.word, flip.sounds]).toEqual([built.word, built.sounds]);
    const before = run[at - 1];
    if (before) {
      const turned = flip.cards.filter((id, pile) => id !== before.cards[pile]);
      expect(turned).toHaveLength(1);
    }
  });
  expect(new Set(run.map(({ word }) => word)).size).toBe(run.length);
}

describe('a run', () => {
  test('changes one card at a time, repeats no word and shows nothing stopped', () => {
    fc.assert(
      fc.property(
        boards,
        fc.integer({ min: 1, max: 40 }),
        fc.constantFrom(0, 0.25, 0.5, 0.75, 1),
        fc.integer(),
        ({ piles, table }, flips, realShare, seed) => {
          const { flips: run, missing } = makeRun(table, { flips, realShare, seed });
          checkRun(run, piles);
          expect(run.length + missing.flips).toBe(flips);
          const real = run.filter(({ kind }) => kind === 'real').length;
          expect(real - Math.round(run.length * realShare)).toBe(missing.real);
          const shown = new Set(
            run.flatMap(({ cards }) => cards.map((id, pile) => `${pile} ${id}`)),
          );
          expect(piles.flat().length - shown.size).toBe(missing.cards);
        },
      ),
      { numRuns: 120 },
    );
  });

  test('on a board with room it is as long as asked, shows every card and keeps the share', () => {
    const piles = [
      'b=B f=F h=HH l=L m=M p=P r=R sh=SH st=S+T'.split(' '),
      'a=AE e=EH i=IH o=AA u=AH'.split(' '),
      'b=B ck=K d=D g=G m=M n=N p=P t=T sh=SH'.split(' '),
    ];
    const table = tableOf(piles);
    fc.assert(
      fc.property(fc.integer(), fc.constantFrom(0.2, 0.5, 0.8), (seed, realShare) => {
        const { flips, missing } = makeRun(table, { flips: 30, realShare, seed });
        expect(missing).toEqual({ flips: 0, real: 0, cards: 0 });
        checkRun(flips, piles);
      }),
    );
  });

  test('the same seed gives the same run, and other seeds other runs', () => {
    fc.assert(
      fc.property(boards, fc.integer(), ({ table }, seed) => {
        const wishes = { flips: 20, realShare: 0.5, seed };
        expect(makeRun(table, wishes)).toEqual(makeRun(table, wishes));
      }),
      { numRuns: 30 },
    );
    const table = tableOf([beginnings.slice(0, 9), vowels.slice(0, 5), endings.slice(0, 9)]);
    const runs = [1, 2, 3, 4, 5].map((seed) =>
      makeRun(table, { flips: 30, realShare: 0.5, seed })
        .flips.map(({ word }) => word)
        .join(' '),
    );
    expect(new Set(runs).size).toBe(5);
  });

  test('which pile changes next cannot be foreseen', () => {
    const table = tableOf([beginnings.slice(0, 9), vowels.slice(0, 5), endings.slice(0, 9)]);
    const follows = new Map<string, number>();
    for (let seed = 0; seed < 40; seed++) {
      const { flips } = makeRun(table, { flips: 30, realShare: 0.5, seed });
      const turned = flips
        .slice(1)
        .map(({ cards }, at) => cards.findIndex((id, pile) => id !== flips[at]?.cards[pile]));
      turned.slice(1).forEach((pile, at) => {
        const pair = `${turned[at]}>${pile}`;
        follows.set(pair, (follows.get(pair) ?? 0) + 1);
      });
    }
    // All nine pairs of 'this pile, then that' occur, and none takes more than a third.
    const all = [...follows.values()].reduce((sum, count) => sum + count, 0);
    expect(follows.size).toBe(9);
    for (const count of follows.values()) expect(count / all).toBeLessThan(1 / 3);
  });

  test('words of the last days are left out while the board has others', () => {
    const table = tableOf([beginnings.slice(0, 10), vowels.slice(0, 5), endings.slice(0, 9)]);
    const yesterday = makeRun(table, { flips: 30, realShare: 0.5, seed: 1 }).flips;
    const avoid = new Set(yesterday.map(({ word }) => word));
    const today = makeRun(table, { flips: 30, realShare: 0.5, seed: 1, avoid });
    expect(today.missing).toEqual({ flips: 0, real: 0, cards: 0 });
    for (const { word } of today.flips) expect(avoid.has(word)).toBe(false);
  });

  test('a board of one word makes a run of one flip', () => {
    const { flips, missing } = makeRun(tableOf([['sh=SH'], ['i=IH'], ['p=P']]), {
      flips: 30,
      realShare: 0.5,
      seed: 1,
    });
    expect(flips.map(({ word }) => word)).toEqual(['ship']);
    expect(missing.flips).toBe(29);
  });

  test('a board without words makes no run', () => {
    const { flips } = makeRun(tableOf([['s=S'], ['i=IH'], ['t=T']]), {
      flips: 30,
      realShare: 0.5,
      seed: 1,
    });
    expect(flips).toEqual([]);
  });

  test('its score lies between a walk by chance and what no run can exceed', () => {
    fc.assert(
      fc.property(
        boards,
        fc.integer({ min: 1, max: 40 }),
        fc.constantFrom(0, 0.25, 0.5, 1),
        fc.integer(),
        ({ table }, flips, realShare, seed) => {
          const { score } = makeRun(table, { flips, realShare, seed });
          expect(score.reached).toBeGreaterThanOrEqual(score.floor);
          expect(score.bound).toBeGreaterThanOrEqual(score.reached);
        },
      ),
      { numRuns: 100 },
    );
  });

  test('on a board of many words it comes within a twentieth of the bound', () => {
    const table = tableOf([beginnings.slice(0, 12), vowels.slice(0, 6), endings.slice(0, 12)]);
    for (let seed = 0; seed < 40; seed++) {
      const { score } = makeRun(table, { flips: 30, realShare: 0.5, seed });
      expect(score.reached / score.bound).toBeGreaterThan(0.95);
    }
  });

  test('look-alikes are turned one into the other when that is asked', () => {
    const table = tableOf([beginnings, vowels, endings]);
    const contrasts: readonly (readonly [string, string])[] = [
      ['b=B', 'd=D'],
      ['e=EH', 'i=IH'],
    ];
    for (let seed = 0; seed < 60; seed++) {
      const { flips } = makeRun(table, { flips: 30, realShare: 0.5, seed, contrasts });
      for (const pair of contrasts) {
        const turned = flips.slice(1).some(({ cards }, at) =>
          cards.some((id, pile) => {
            const before = flips[at]?.cards[pile] as string;
            return id !== before && pair.includes(id) && pair.includes(before);
          }),
        );
        expect(`${seed} ${pair} ${turned}`).toBe(`${seed} ${pair} true`);
      }
    }
  });

  test('with a rise the last third has more sounds than the first', () => {
    const table = tableOf([beginnings, vowels, endings]);
    const mean = (flips: readonly Flip[]): number =>
      flips.reduce((sum, { sounds }) => sum + sounds.length, 0) / flips.length;
    let higher = 0;
    for (let seed = 0; seed < 20; seed++) {
      const { flips } = makeRun(table, { flips: 30, realShare: 0.5, seed, rise: true });
      checkRun(flips, [beginnings, vowels, endings]);
      if (mean(flips.slice(20)) > mean(flips.slice(0, 10))) higher++;
    }
    expect(higher).toBeGreaterThanOrEqual(18);
  });

  test('equal seeds give equal runs', () => {
    fc.assert(
      fc.property(boards, fc.integer(), fc.boolean(), ({ table }, seed, rise) => {
        const wishes = { flips: 20, realShare: 0.5, seed, rise };
        expect(makeRun(table, wishes)).toEqual(makeRun(table, wishes));
      }),
      { numRuns: 30 },
    );
  });
});
