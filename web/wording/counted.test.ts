import { expect, it } from 'vitest';
import { counted } from './counted.ts';

it.each([
  [1, '1 child'],
  [0, '0 children'],
  [3, '3 children'],
])('counts %i', (count, said) => {
  expect(counted(count, 'child', 'children')).toBe(said);
});
