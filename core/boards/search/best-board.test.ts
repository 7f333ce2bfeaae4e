import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { builtLexicon } from '../../../test/built-lexicon.ts';
import { makePlainScreen } from '../../../test/plain-screen.ts';
import type { CardId } from '../../language/card-id.ts';
import type { Correspondence } from '../../language/correspondence.ts';
import { CORRESPONDENCES, correspondenceById } from '../../language/correspondences.ts';
import { judgeWord } from '../judge/judge.ts';
import type { JudgeContext } from '../judge/judge-context.ts';
import { shapeById } from '../shapes/shape-list.ts';
import type { Shape } from '../shapes/shapes.ts';
import type { FoundBoard } from './best-board.ts';
import type { BoardWishes } from './board-wishes.ts';
import { findBoard } from './find-board.ts';

const closed = shapeById.get('closed') as Shape;
const context: JudgeContext = {
  taught: {
    correspondences: new Set(CORRESPONDENCES.map(({ id }) => id)),
    habits: new Set(),
    irregularWords: new Set(),
  },
  lexicon: builtLexicon,
  screen: makePlainScreen(['bat', 'pin', 'mop', 'set'], ['lid']),
};
const ids =
  'b=B d=D f=F h=HH l=L m=M n=N p=P s=S t=T sh=SH st=S+T a=AE e=EH i=IH o=AA u=AH ck=K ng=NG nd=N+D'.split(
    ' ',
  ) as CardId[];
const cards = ids.map((id) => correspondenceById.get(id) as Correspondence);

function find(some: readonly Correspondence[], wishes: BoardWishes): FoundBoard {
  const found = findBoard(closed, some, wishes, context);
  if (found.kind !== 'found') throw new Error(found.message);
  return found;
}

/** Every combination of a board, judged one by one. */
function combinations({ board }: FoundBoard): string[] {
  const [begin = [], middle = [], end = []] = board.piles;
  return begin.flatMap((b) =>
    middle.flatMap((v) =>
      end.map((e) => {
        const built = judgeWord([b, v, e], context);
        return built.kind === 'stopped' ? built.reason.code : built.kind;
      }),
    ),
  );
}

describe('the best board', () => {
  const wishes = fc.record({
    limits: fc.tuple(
      fc.integer({ min: 2, max: 6 }),
      fc.integer({ min: 1, max: 5 }),
      fc.integer({ min: 2, max: 6 }),
    ),
    pinnedEverywhere: fc.subarray<CardId>(['sh=SH', 'e=EH', 'ng=NG'], { maxLength: 1 }),
    banned: fc.subarray(['t=T', 'a=AE', 'nd=N+D'], { maxLength: 2 }),
  });

  test('clean: no combination is stopped by the screen; strict: none breaks a rule either', () => {
    fc.assert(
      fc.property(wishes, fc.boolean(), (asked, strict) => {
        const found = find(cards, { ...asked, clean: true, strict });
        const codes = new Set(combinations(found));
        const wanted = strict
          ? ['real', 'nonsense']
          : ['real', 'nonsense', 'rule', 'name', 'sound-alike', 'said-differently'];
        for (const code of codes) expect(wanted).toContain(code);
      }),
      { numRuns: 40 },
    );
  });

  test('limits, pins and bans hold, and the counts are those of its combinations', () => {
    fc.assert(
      fc.property(wishes, (asked) => {
        const found = find(cards, asked);
        found.board.piles.forEach((pile, at) => {
          expect(pile.length).toBeLessThanOrEqual(asked.limits[at] as number);
          for (const id of asked.banned) expect(pile).not.toContain(id);
        });
        for (const id of asked.pinnedEverywhere) expect(found.board.piles.flat()).toContain(id);
        const codes = combinations(found);
        const real = found.counts.familiar + found.counts.rare;
        expect(real).toBe(codes.filter((code) => code === 'real').length);
        expect(found.counts.nonsense).toBe(codes.filter((code) => code === 'nonsense').length);
        expect(found.counts.screened).toBe(codes.filter((code) => code === 'screened').length);
        expect(found.value).toBe(
          4 * found.counts.familiar + found.counts.rare + found.counts.nonsense,
        );
        expect(found.optimal).toBe(true);
      }),
      { numRuns: 40 },
    );
  });

  test('one more taught card never makes the best board worth less', () => {
    fc.assert(
      fc.property(
        fc.subarray(cards, { minLength: 10 }),
        fc.constantFrom(...cards),
        (some, more) => {
          const limits = [5, 3, 5];
          const before = findBoard(closed, some, { limits, clean: true }, context);
          const after = findBoard(
            closed,
            [...new Set([...some, more])],
            { limits, clean: true },
            context,
          );
          if (before.kind !== 'found' || after.kind !== 'found') return;
          expect(after.value).toBeGreaterThanOrEqual(before.value);
        },
      ),
      { numRuns: 40 },
    );
  });

  test('why there is no board is said in words', () => {
    const none = findBoard(
      closed,
      cards.filter(({ kind }) => kind !== 'short-vowel'),
      { limits: [3, 3, 3] },
      context,
    );
    expect(none.kind).toBe('no-cards');
    const clash = findBoard(
      closed,
      cards,
      { limits: [3, 3, 3], pinnedEverywhere: ['h=HH', 'sh=SH', 'l=L', 'st=S+T'] },
      context,
    );
    expect(clash).toMatchObject({ kind: 'too-many-pins' });
    const stopped = findBoard(
      closed,
      (['b=B', 'a=AE', 'ck=K', 'm=M', 'p=P', 'i=IH', 'nd=N+D'] satisfies readonly CardId[]).map(
        (id) => correspondenceById.get(id) as Correspondence,
      ),
      { limits: [3, 3, 3], clean: true, pinnedEverywhere: ['b=B', 'a=AE', 'ck=K'] },
      { ...context, screen: makePlainScreen(['back']) },
    );
    expect(stopped).toMatchObject({ kind: 'pins-clash', cards: ['b=B', 'a=AE', 'ck=K'] });
  });
});
