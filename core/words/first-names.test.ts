import { expect, it } from 'vitest';
import { isFirstName } from './first-names.ts';

it('first names are known by their lower-case spelling, and nothing else is', () => {
  expect(isFirstName('sam')).toBe(true);
  expect(isFirstName('zib')).toBe(false);
  expect(isFirstName('constructor')).toBe(false);
});
