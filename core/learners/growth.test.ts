import { describe, expect, it } from 'vitest';
import { childId, groupId } from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import { estimateCard, estimateCount } from './estimate.ts';
import { growthOf } from './growth.ts';
import { knowledgeFrom } from './knowledge.ts';
import type { Observation } from './observation.ts';

const MINA = { of: 'child', id: childId('Mina') } as const;
const DAY = 20_000;
const CARDS: readonly CardId[] = ['m=M', 'e=EH', 'sh=SH'];

function read(card: CardId, day: number, right: boolean, child = childId('Mina')): Observation {
  return {
    day,
    child,
    groups: [groupId('g')],
    task: 'read',
    cards: [card],
    right,
    broke: right ? null : 1,
    heard: null,
  };
}

const observations = [
  ...[0, 1, 2, 5, 9, 14, 20].map((ago) => read('m=M', DAY - ago, true)),
  ...[0, 1, 2, 3, 4].flatMap((ago) => [read('e=EH', DAY - ago, ago < 2)]),
  read('sh=SH', DAY - 30, true, childId('Kofi')),
];
const growth = growthOf(observations, 'read', MINA, CARDS, DAY);

describe('growth', () => {
  it('begins with the first reading of their own and ends today', () => {
    expect(growth[0]?.day).toBe(DAY - 20);
    expect(growth.at(-1)?.day).toBe(DAY);
    const days = growth.map(({ day }) => day);
    expect(days).toEqual([...new Set(days)].sort((one, other) => one - other));
  });

  it('has a point for each of few days, one for a first day that is today, and begins with any word of such a card', () => {
    const daysOf = (all: readonly Observation[]) =>
      growthOf(all, 'read', MINA, CARDS, DAY).map(({ day }) => day);
    expect(daysOf([read('m=M', DAY - 2, true)])).toEqual([DAY - 2, DAY - 1, DAY]);
    expect(daysOf([read('m=M', DAY, true)])).toEqual([DAY]);
    const word = { ...read('m=M', DAY - 1, true), cards: ['m=M', 'a=AE'] as const };
    expect(daysOf([word, read('m=M', DAY, true)])).toEqual([DAY - 1, DAY]);
  });

  it('knows nothing of what was read later than the day on which it ends', () => {
    const then = growthOf(observations, 'read', MINA, CARDS, DAY - 3);
    const early = observations.filter(({ day }) => day <= DAY - 3);
    expect(then).toEqual(growthOf(early, 'read', MINA, CARDS, DAY - 3));
    expect(then.at(-1)?.day).toBe(DAY - 3);
  });

  it('counts what was met by then, and never what only others read', () => {
    expect(growth[0]?.met).toBe(1);
    expect(growth.at(-1)?.met).toBe(2);
  });

  it('ends with what is known today: the sum of the estimates of the cards met', () => {
    const { read: known } = knowledgeFrom(observations);
    const now = (['m=M', 'e=EH'] satisfies readonly CardId[]).map((card) =>
      estimateCard(known, MINA, card, DAY),
    );
    const last = growth.at(-1);
    expect(last?.known).toBeCloseTo(
      now.reduce((sum, { p }) => sum + p, 0),
      9,
    );
  });

  it('is surer of a number of cards than of each, and of one card as sure as of that card', () => {
    const { read: known } = knowledgeFrom(observations);
    const cards: readonly CardId[] = ['m=M', 'e=EH'];
    const each = cards.map((card) => estimateCard(known, MINA, card, DAY));
    const width = ({ low, high }: { readonly low: number; readonly high: number }) => high - low;
    const both = estimateCount(known, MINA, cards, DAY);
    expect(width(both)).toBeLessThan(each.reduce((sum, one) => sum + width(one), 0));
    expect(width(both)).toBeGreaterThan(Math.hypot(...each.map(width)));
    const one = estimateCount(known, MINA, ['m=M', 'sh=SH'], DAY);
    expect(one.met).toBe(1);
    expect(one.low).toBeCloseTo(each[0]?.low ?? 0, 9);
    expect(one.high).toBeCloseTo(each[0]?.high ?? 0, 9);
  });

  it('says of each day only what had been read by then', () => {
    const half = DAY - 10;
    const early = observations.filter(({ day }) => day <= half);
    const ofHalf = growthOf(early, 'read', MINA, CARDS, half).at(-1);
    expect(growth.find(({ day }) => day === half)).toEqual(ofHalf);
  });

  it('stays between its bounds, and looks at forty days at most, however long it was', () => {
    const year = Array.from({ length: 300 }, (_, n) => read('m=M', DAY - n, n % 3 > 0));
    const long = growthOf(year, 'read', MINA, CARDS, DAY);
    expect(long).toHaveLength(40);
    for (const { low, known, high, met } of [...long, ...growth]) {
      expect(low).toBeLessThanOrEqual(known);
      expect(known).toBeLessThanOrEqual(high);
      expect(high).toBeLessThanOrEqual(met);
    }
  });

  it('is empty of a child who has read nothing, and of the other skill', () => {
    expect(growthOf(observations, 'read', { of: 'child', id: childId('Sol') }, CARDS, DAY)).toEqual(
      [],
    );
    expect(growthOf(observations, 'spell', MINA, CARDS, DAY)).toEqual([]);
  });
});
