import { describe, expect, it } from 'vitest';
import { SEQUENCE } from '../core/sequence/built-in.ts';
import { stepOf } from '../core/sequence/step-of.ts';
import { drill } from './drill.ts';
import { Failure } from './failure.ts';

interface Printed {
  readonly visual: readonly string[];
  readonly auditory: readonly { readonly spellings: readonly string[] }[];
  readonly board: { readonly piles: readonly (readonly string[])[] };
  readonly run: readonly { readonly cards: readonly string[]; readonly kind: string }[];
  readonly shortfall?: string;
  readonly score: { readonly reached: number; readonly floor: number; readonly bound: number };
}

/** Clusters at both ends, and no vowel teams yet. */
const taught = `step:${stepOf(SEQUENCE, { kind: 'card', id: 'bl=B+L' })}`;

function made(...args: string[]): Printed {
  return JSON.parse(drill(['--taught', taught, '--seed', '7', '--json', ...args])) as Printed;
}

describe('the drill command', () => {
  it('shows the cards in focus as often as asked, beside the share of real words', () => {
    const { run } = made('--focus', 'sh', '--focus-share', '0.6');
    expect(run).toHaveLength(30);
    expect(run.filter(({ cards }) => cards.includes('sh=SH'))).toHaveLength(18);
    expect(run.filter(({ kind }) => kind === 'real')).toHaveLength(15);
  });

  it('ends with as many words known by sight as are asked for, and has none by itself', () => {
    const bySight = (ids: readonly string[]) => ids.filter((id) => id.endsWith('=sight'));
    const { visual, auditory } = made('--sight', '3', '--sight-said', '2');
    expect(bySight(visual)).toEqual(visual.slice(-3));
    expect(bySight(auditory.flatMap(({ spellings }) => spellings))).toHaveLength(2);
    expect(bySight(made().visual)).toEqual([]);
  });

  it('lays look-alikes in one pile and turns one into the other', () => {
    const { board, run } = made('--contrast', 'b/d,e/i');
    for (const pair of [
      ['b=B', 'd=D'],
      ['e=EH', 'i=IH'],
    ]) {
      expect(board.piles.some((pile) => pair.every((id) => pile.includes(id)))).toBe(true);
      const turned = run.slice(1).some(({ cards }, at) =>
        cards.some((id, pile) => {
          const before = run[at]?.cards[pile] as string;
          return id !== before && pair.includes(id) && pair.includes(before);
        }),
      );
      expect(turned).toBe(true);
    }
  });

  it('begins with easier words when it is to rise', () => {
    const mean = (run: Printed['run']) =>
      run.reduce((sum, { cards }) => sum + cards.length + cards.join('').split('+').length, 0) /
      run.length;
    const { run } = made('--rise', '--focus', 'st,tr,bl');
    expect(mean(run.slice(20))).toBeGreaterThan(mean(run.slice(0, 10)));
  });

  it('prints a score between its floor and its bound', () => {
    const { score } = made();
    expect(score.reached).toBeGreaterThanOrEqual(score.floor);
    expect(score.bound).toBeGreaterThanOrEqual(score.reached);
  });

  it('ends with a kind message where a wish cannot be meant', () => {
    const asked =
      (...args: string[]) =>
      () =>
        made(...args);
    expect(asked('--contrast', 'b')).toThrow(Failure);
    expect(asked('--contrast', 'b')).toThrow('b/d');
    expect(asked('--contrast', 'b/oi')).toThrow('not taught');
    expect(asked('--contrast', 'b/b')).toThrow('alike');
    expect(asked('--focus-share', '0.5')).toThrow('--focus');
    expect(asked('--focus', 'sh', '--focus-share', '2')).toThrow('from 0 to 1');
  });
});
