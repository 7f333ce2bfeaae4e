import fc from 'fast-check';
import { expect, test } from 'vitest';
import { keepApart } from './keep-apart.ts';

/** Items are alike when they have the same letter; the number tells them apart. */
const items = fc
  .array(fc.constantFrom('b', 'p', 'n'), { maxLength: 6 })
  .map((letters) => letters.map((letter, at) => `${letter}${at}`));
const before = fc.option(fc.constantFrom('b-', 'n-'), { nil: undefined });
const alike = (one: string, other: string) => one[0] === other[0];

const pairs = (order: readonly string[]) =>
  order.filter((item, at) => at > 0 && alike(order[at - 1] as string, item)).length;

/** Every order there is. */
function orders(of: readonly string[]): readonly (readonly string[])[] {
  if (of.length === 0) return [[]];
  return of.flatMap((first, at) => orders(of.toSpliced(at, 1)).map((rest) => [first, ...rest]));
}

test('items stand beside their like only where every order has some that do', () => {
  fc.assert(
    fc.property(items, before, (all, last) => {
      const led = (order: readonly string[]) => (last === undefined ? order : [last, ...order]);
      const ordered = keepApart(all, alike, last);
      expect([...ordered].sort()).toEqual([...all].sort());
      const canPart = orders(all).some((order) => pairs(led(order)) === 0);
      expect(pairs(led(ordered)) === 0).toBe(canPart);
    }),
    { numRuns: 300 },
  );
});

test('items that are apart already keep their order', () => {
  const order = ['b1', 'p1', 'b2', 'n1', 'b3'];
  expect(keepApart(order, alike)).toEqual(order);
  expect(keepApart(order, alike, 'n0')).toEqual(order);
});
