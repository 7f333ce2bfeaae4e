import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { builtLexicon } from '../../../test/built-lexicon.ts';
import {
  beginnings,
  boards,
  checkRun,
  context,
  contrastsIn,
  endings,
  tableOf,
  vowels,
  wholeBoard,
} from '../../../test/run-boards.ts';
import type { CardId } from '../../language/card-id.ts';
import { makeRun } from './run.ts';
import type { RunWishes } from './wishes.ts';

const AS_WISHED = {
  flips: 0,
  real: 0,
  fresh: 0,
  focused: 0,
  due: 0,
  cards: 0,
  contrasts: 0,
  contrastTurns: 0,
};
const LOOK_ALIKES: readonly (readonly [CardId, CardId])[] = [
  ['b=B', 'd=D'],
  ['e=EH', 'i=IH'],
  ['m=M', 'n=N'],
];

/** Wishes of every sort, also such as the board cannot fulfil. */
const wishes: fc.Arbitrary<RunWishes> = fc.record(
  {
    flips: fc.integer({ min: 1, max: 40 }),
    realShare: fc.constantFrom(0, 0.25, 0.5, 0.75, 1),
    seed: fc.integer(),
    avoid: fc
      .subarray(wholeBoard.words as string[], { maxLength: 300 })
      .map((words) => new Set(words)),
    focus: fc.subarray([...beginnings, ...vowels, ...endings], { minLength: 1, maxLength: 3 }),
    focusShare: fc.double({ min: 0, max: 1, noNaN: true }),
    contrasts: fc.subarray([...LOOK_ALIKES]),
    rise: fc.boolean(),
  },
  { requiredKeys: ['flips', 'realShare', 'seed'] },
);

describe('a run', () => {
  test('changes one card at a time, repeats no word and shows nothing stopped', () => {
    fc.assert(
      fc.property(boards, wishes, ({ piles, table }, asked) => {
        checkRun(makeRun(table, asked, builtLexicon).flips, piles);
      }),
      { numRuns: 150 },
    );
  });

  test('shows no card that was not taught', () => {
    const cards = [...beginnings, ...vowels, ...endings];
    fc.assert(
      fc.property(boards, fc.subarray(cards), wishes, ({ piles }, ids, asked) => {
        const own = { ...context, taught: { ...context.taught, correspondences: new Set(ids) } };
        const { flips } = makeRun(tableOf(piles, own), asked, builtLexicon);
        checkRun(flips, piles, own);
        const taught = new Set(ids);
        for (const { cards } of flips) {
          for (const id of cards.filter((card) => !card.includes('+'))) {
            expect(taught.has(id)).toBe(true);
          }
        }
      }),
      { numRuns: 80 },
    );
  });

  test('says what it could not keep of the wishes', () => {
    fc.assert(
      fc.property(boards, wishes, ({ piles, table }, asked) => {
        const { flips, missing } = makeRun(table, asked, builtLexicon);
        const { avoid, focus = [], focusShare, contrasts = [], realShare } = asked;
        const counted = (test: (flip: (typeof flips)[number]) => boolean) =>
          flips.filter(test).length;
        const shown = new Set(
          flips.flatMap(({ cards }) => cards.map((id, pile) => `${pile} ${id}`)),
        );
        expect(flips.length + missing.flips).toBe(asked.flips);
        expect(missing.real).toBe(
          counted(({ kind }) => kind === 'real') - Math.round(flips.length * realShare),
        );
        expect(missing.fresh).toBe(counted(({ word }) => avoid?.has(word) === true));
        expect(missing.cards).toBe(piles.flat().length - shown.size);
        const focused = counted(({ cards }) => cards.some((id) => focus.includes(id)));
        const asking = focusShare !== undefined && focus.length > 0;
        expect(missing.focused).toBe(asking ? focused - Math.round(flips.length * focusShare) : 0);
        const lying = contrasts.flatMap((pair) =>
          piles.filter((pile) => pair.every((id) => pile.includes(id))),
        ).length;
        expect(contrastsIn(flips, contrasts) + missing.contrasts).toBeLessThanOrEqual(lying);
      }),
      { numRuns: 150 },
    );
  });

  test('on a board with room it is as long as asked, shows every card and keeps the share', () => {
    const piles = [
      'b=B f=F h=HH l=L m=M p=P r=R sh=SH st=S+T'.split(' ') as CardId[],
      'a=AE e=EH i=IH o=AA u=AH'.split(' ') as CardId[],
      'b=B ck=K d=D g=G m=M n=N p=P t=T sh=SH'.split(' ') as CardId[],
    ];
    const table = tableOf(piles);
    fc.assert(
      fc.property(fc.integer(), fc.constantFrom(0.2, 0.5, 0.8), (seed, realShare) => {
        const { flips, missing } = makeRun(table, { flips: 30, realShare, seed }, builtLexicon);
        expect(missing).toEqual(AS_WISHED);
        checkRun(flips, piles);
      }),
    );
  });

  test('the same seed gives the same run, and other seeds other runs', () => {
    fc.assert(
      fc.property(boards, wishes, ({ table }, asked) => {
        expect(makeRun(table, asked, builtLexicon)).toEqual(makeRun(table, asked, builtLexicon));
      }),
      { numRuns: 40 },
    );
    const runs = [1, 2, 3, 4, 5].map((seed) =>
      makeRun(wholeBoard, { flips: 30, realShare: 0.5, seed }, builtLexicon)
        .flips.map(({ word }) => word)
        .join(' '),
    );
    expect(new Set(runs).size).toBe(5);
  });

  test('a board of one word makes a run of one flip', () => {
    const table = tableOf([['sh=SH'], ['i=IH'], ['p=P']]);
    const asked = { flips: 30, realShare: 0.5, seed: 1 };
    const { flips, missing } = makeRun(table, asked, builtLexicon);
    expect(flips.map(({ word }) => word)).toEqual(['ship']);
    expect(missing.flips).toBe(29);
  });

  test('a board without words makes no run', () => {
    const table = tableOf([['s=S'], ['i=IH'], ['t=T']]);
    const { flips, score } = makeRun(table, { flips: 30, realShare: 0.5, seed: 1 }, builtLexicon);
    expect([flips, score]).toEqual([[], { reached: 0, floor: 0, bound: 0 }]);
  });
});
