import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CardId } from '../core/language/card-id.ts';
import type { Apart } from '../core/sequence/apart.ts';
import { orderUnits, type Unit, type WeighedWord } from './order-units.ts';

const letters = [...'abcde'].map((letter): CardId => `${letter}=${letter.toUpperCase()}`);
const units: readonly Unit[] = letters.map((letter) => ({ keys: [`card:${letter}`] }));

const anyWords: fc.Arbitrary<readonly WeighedWord[]> = fc.array(
  fc.record({
    needs: fc
      .uniqueArray(fc.constantFrom(...letters), { minLength: 1, maxLength: 3 })
      .map((asked) => asked.map((letter) => `card:${letter}`)),
    weight: fc.integer({ min: 1, max: 6 }),
  }),
  { maxLength: 12 },
);
const anyApart: fc.Arbitrary<readonly Apart[]> = fc.array(
  fc.record({
    cards: fc
      .uniqueArray(fc.constantFrom(...letters), { minLength: 2, maxLength: 2 })
      .map((pair) => pair as [CardId, CardId]),
    steps: fc.integer({ min: 1, max: 3 }),
    because: fc.constant('which it looks like'),
  }),
  { maxLength: 2 },
);

/** Every order of the numbers from 0 below `count`. */
function permutations(count: number): readonly (readonly number[])[] {
  if (count === 0) return [[]];
  return permutations(count - 1).flatMap((order) =>
    Array.from({ length: count }, (_, place) => order.toSpliced(place, 0, count - 1)),
  );
}

function worth(order: readonly number[], words: readonly WeighedWord[]): number {
  return order.reduce((sum, _, place) => {
    const known = new Set(order.slice(0, place + 1).map((unit) => `card:${letters[unit]}`));
    const readable = words.filter(({ needs }) => needs.every((need) => known.has(need)));
    return sum + readable.reduce((total, { weight }) => total + weight, 0);
  }, 0);
}

function keepsApart(order: readonly number[], apart: readonly Apart[]): boolean {
  return apart.every(({ cards, steps }) => {
    const [left, right] = cards.map((card) => order.indexOf(letters.indexOf(card)));
    return Math.abs((left as number) - (right as number)) >= steps;
  });
}

describe('the order of a few units', () => {
  test('is worth as much as the best of all orders that keep their distances', () => {
    const orders = permutations(letters.length);
    fc.assert(
      fc.property(anyWords, anyApart, (words, apart) => {
        const legal = orders.filter((order) => keepsApart(order, apart));
        const found = orderUnits(units, words, apart, new Map(), 1);
        if (legal.length === 0) {
          expect(found).toBeNull();
          return;
        }
        expect(found && keepsApart(found, apart)).toBe(true);
        const best = Math.max(...legal.map((order) => worth(order, words)));
        expect(worth(found ?? [], words)).toBe(best);
      }),
      { numRuns: 60 },
    );
  });

  test('keeps its distance from what was taught before', () => {
    const before = new Map([['card:z=Z', 7]]);
    const apart: readonly Apart[] = [{ cards: ['a=A', 'z=Z'], steps: 4, because: '' }];
    const words = [{ needs: ['card:a=A'], weight: 6 }];
    expect(orderUnits(units, words, apart, before, 8)?.indexOf(0)).toBe(3);
    expect(orderUnits(units, words, apart, before, 20)?.indexOf(0)).toBe(0);
  });

  test('obeys a rule about how it begins', () => {
    const order = orderUnits(units, [], [], new Map(), 1, ([first]) => first === 4);
    expect(order?.[0]).toBe(4);
  });
});
