import { describe, expect, test } from 'vitest';
import { builtLexicon } from '../../../test/built-lexicon.ts';
import { makePlainScreen } from '../../../test/plain-screen.ts';
import type { CardId } from '../../language/card-id.ts';
import { CORRESPONDENCES } from '../../language/correspondences.ts';
import { SPELLING_RULES } from '../../language/spelling-rules.ts';
import { HABITS, type Taught } from '../../language/taught.ts';
import { SHAPES, shapeById } from '../shapes/shape-list.ts';
import type { Shape } from '../shapes/shapes.ts';
import type { JudgeContext } from './judge-context.ts';
import { makeRowJudge } from './row-judge.ts';
import { type BoardToJoin, whyNotHere } from './why-not-here.ts';

const all: Taught = {
  correspondences: new Set(CORRESPONDENCES.map(({ id }) => id)),
  habits: new Set(HABITS),
  irregularWords: new Set(),
};
const screen = makePlainScreen(['bim', 'bin', 'mam'], ['nam']);

function standing(
  shape: string,
  piles: readonly (readonly CardId[])[],
  rest: Partial<BoardToJoin> = {},
): BoardToJoin {
  const context: JudgeContext = { taught: rest.taught ?? all, lexicon: builtLexicon, screen };
  const judge = makeRowJudge(shapeById.get(shape) as Shape, context);
  return { piles, room: piles.map(() => 8), taught: all, judge, onPaper: false, ...rest };
}

const closed = standing('closed', [['m=M'], ['a=AE', 'i=IH'], ['m=M', 't=T']]);
const ruleWhy = (id: string) => SPELLING_RULES.find((rule) => rule.id === id)?.why;

describe('why a card cannot stand in a pile', () => {
  /* Positions as in the National Curriculum in England, English Appendix 1 (DfE 2013): no word ends
     in j or v; ck, tch, dge and doubled letters follow a vowel; k before e, i, y. */
  test.each<[CardId, number, string]>([
    ['j=JH', 2, 'never-last'],
    ['v=V', 2, 'never-last'],
    ['h=HH', 2, 'never-last'],
    ['kn=N', 2, 'first-only'],
    ['ck=K', 0, 'ending-only'],
    ['tch=CH', 0, 'ending-only'],
    ['ll=L', 0, 'ending-only'],
    ['nd=N+D', 0, 'legal-onset'],
    ['r=R', 2, 'r-after-vowel'],
  ])('%s in pile %i: in the words of the rule %s', (id, pile, rule) => {
    expect(whyNotHere(id, pile, closed)).toMatchObject({
      code: 'rule',
      message: ruleWhy(rule),
      forbids: true,
    });
  });

  test('vowels and consonants are told apart', () => {
    expect(whyNotHere('a=AE', 0, closed)).toMatchObject({ code: 'kind', forbids: true });
    expect(whyNotHere('sh=SH', 1, closed)).toMatchObject({ code: 'kind', forbids: true });
  });

  test('a card of another board is sent there by name', () => {
    expect(whyNotHere('a_e=EY', 1, closed)?.message).toContain('“Silent e”');
    expect(whyNotHere('le=AX+L', 2, closed)?.message).toContain('“Consonant and le”');
    expect(whyNotHere('ing=IH+NG', 2, closed)?.message).toContain('“A base and an ending”');
    expect(whyNotHere('s=Z', 0, closed)).toMatchObject({ code: 'place', forbids: true });
  });

  test('an untaught card, a full pile and a card that lies there are named as such', () => {
    const taught = { ...all, correspondences: new Set<CardId>(['m=M', 'a=AE', 'i=IH', 't=T']) };
    expect(whyNotHere('p=P', 0, { ...closed, taught })).toMatchObject({ code: 'untaught' });
    expect(whyNotHere('p=P', 0, { ...closed, room: [1, 8, 8] })).toMatchObject({ code: 'full' });
    expect(whyNotHere('m=M', 0, closed)).toMatchObject({ code: 'lies-here' });
  });

  test('on paper a stopped word speaks against it, and the screen may skip it', () => {
    const here = standing('closed', [['m=M'], ['a=AE', 'i=IH'], ['m=M', 't=T']], { onPaper: true });
    const why = whyNotHere('b=B', 0, here);
    expect(why).toMatchObject({ code: 'stopped', forbids: false });
    expect(whyNotHere('b=B', 0, { ...here, onPaper: false })).toBeNull();
  });

  test('a stopped word is never printed, nor are all its cards', () => {
    const here = standing('closed', [['m=M'], ['a=AE', 'i=IH'], ['m=M', 'n=N']], { onPaper: true });
    for (const id of ['b=B', 'n=N'] satisfies readonly CardId[]) {
      const why = whyNotHere(id, 0, here);
      expect(why?.code).toBe('stopped');
      expect(why?.message).not.toMatch(/\b(bim|bin|nam)\b/);
      const piles = here.piles.filter((pile) => pile.some((card) => why?.cards.includes(card)));
      expect(piles).toHaveLength(1);
    }
  });

  test('a card that makes no word here says which rule is in its way', () => {
    const here = standing('closed', [['m=M'], ['e=EH', 'i=IH'], ['t=T']]);
    const why = whyNotHere('k=K', 2, here);
    expect(why).toMatchObject({ code: 'no-word', forbids: false });
    expect(why?.message).toContain(ruleWhy('ck-after-short'));
  });

  test('nothing speaks against a card while another pile is empty', () => {
    expect(whyNotHere('b=B', 0, standing('closed', [[], [], ['t=T']]))).toBeNull();
  });

  test('whatever card and pile, a pile refuses exactly what its shape does not take', () => {
    const forShape = ['kind', 'rule', 'place'];
    for (const shape of SHAPES) {
      const here = standing(
        shape.id,
        shape.piles.map(() => []),
      );
      shape.piles.forEach(({ takes }, pile) => {
        for (const card of CORRESPONDENCES) {
          const why = whyNotHere(card.id, pile, here);
          expect(why === null || !forShape.includes(why.code), `${card.id} ${shape.id}`).toBe(
            takes(card),
          );
          expect(why?.message ?? '.').toMatch(/[.”]$/);
        }
      });
    }
  });
});
