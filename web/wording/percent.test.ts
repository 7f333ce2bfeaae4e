import { expect, it } from 'vitest';
import { percent } from './percent.ts';

it.each([
  [0, '0%'],
  [0.949, '94%'],
  [0.95, '95%'],
  [0.29, '29%'],
  [0.9996, '99.9%'],
  [1, '100%'],
])('%f is said as %s and never as more than it is', (share, said) => {
  expect(percent(share)).toBe(said);
});
