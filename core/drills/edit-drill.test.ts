import { describe, expect, test } from 'vitest';
import { builtLexicon } from '../../test/built-lexicon.ts';
import { makePlainScreen } from '../../test/plain-screen.ts';
import type { CardId } from '../language/card-id.ts';
import { correspondencesByGrapheme } from '../language/correspondences.ts';
import type { Taught } from '../language/taught.ts';
import { buildDrill } from './build-drill.ts';
import type { Drill } from './drill.ts';
import { dropFlip, type Edited, flipChoices, isOneCardAway, reshuffleRun } from './edit-drill.ts';

const engine = { lexicon: builtLexicon, screen: makePlainScreen() };
const cards = 'm a s t p i n d o c e f g h b l r u sh ch th ck ff ll ss'.split(' ');
const taught: Taught = {
  correspondences: new Set(
    cards.map((card) => correspondencesByGrapheme.get(card)?.[0]?.id as CardId),
  ),
  habits: new Set(),
  irregularWords: new Set(),
};
const drill = buildDrill({ taught, seed: 1 }, engine);

function changed(edited: Edited): Drill {
  if (edited.kind === 'refused') throw new Error(edited.message);
  return edited.drill;
}

function keepsTheLaw({ run }: Drill): boolean {
  const apart = run.every((flip, at) => at === 0 || isOneCardAway(flip, run[at - 1]!));
  return apart && new Set(run.map(({ word }) => word)).size === run.length;
}

describe('changing a drill', () => {
  test('every choice for a flip stays one card away from both neighbors and repeats no word', () => {
    let tried = 0;
    for (let index = 0; index < drill.run.length; index++) {
      for (const flip of flipChoices(drill, index, taught, engine)) {
        tried++;
        const run = drill.run.map((old, at) => (at === index ? flip : old));
        expect(keepsTheLaw({ ...drill, run })).toBe(true);
        expect(flip.word).not.toBe(drill.run[index]?.word);
      }
    }
    expect(tried).toBeGreaterThan(5);
  });

  test('choices of the same kind come first', () => {
    for (let index = 0; index < drill.run.length; index++) {
      const kinds = flipChoices(drill, index, taught, engine).map(
        ({ kind }) => kind === drill.run[index]?.kind,
      );
      expect(kinds).toEqual([...kinds].sort((one, other) => Number(other) - Number(one)));
    }
  });

  test('a flip can be left out only where one card still changes at a time', () => {
    for (let index = 0; index < drill.run.length; index++) {
      const edited = dropFlip(drill, index);
      const before = drill.run[index - 1];
      const after = drill.run[index + 1];
      const may = !before || !after || isOneCardAway(before, after);
      expect(edited.kind).toBe(may ? 'changed' : 'refused');
      if (edited.kind === 'changed') {
        expect(keepsTheLaw(edited.drill)).toBe(true);
        expect(edited.drill.run).toHaveLength(29);
      }
    }
  });

  test('reshuffled, the board stays and the order is new', () => {
    const next = changed(reshuffleRun(drill, taught, engine, { seed: 77 }));
    expect(next.board).toEqual(drill.board);
    expect(next.run).not.toEqual(drill.run);
    expect(next.run).toHaveLength(30);
    expect(next.run.filter(({ kind }) => kind === 'real')).toHaveLength(15);
    expect(keepsTheLaw(next)).toBe(true);
  });

  test('reshuffled with wishes, the run keeps them', () => {
    const avoid = new Set(drill.run.map(({ word }) => word));
    const contrasts = [['b=B', 'd=D']] as const;
    const focus = [drill.board.piles[1]?.[0] as CardId];
    const wishes = { seed: 5, flips: 20, realShare: 0.5, avoid, contrasts, focus, focusShare: 0.5 };
    const { run } = changed(reshuffleRun(drill, taught, engine, wishes));
    expect(run).toHaveLength(20);
    expect(run.filter(({ cards }) => cards.includes(focus[0] as CardId))).toHaveLength(10);
    for (const { word } of run) expect(avoid.has(word)).toBe(false);
  });

  test('a place that the drill does not have is refused', () => {
    expect(flipChoices(drill, 99, taught, engine)).toEqual([]);
    expect(dropFlip(drill, 99).kind).toBe('refused');
  });
});
