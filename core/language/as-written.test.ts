import { expect, it } from 'vitest';
import { asWritten } from './as-written.ts';

it('I, days and months have a capital, other words none', () => {
  expect(asWritten('i')).toBe('I');
  expect(asWritten('tuesday')).toBe('Tuesday');
  // Also common words in lower case: to march, and may.
  expect(asWritten('march')).toBe('march');
  expect(asWritten('may')).toBe('may');
});
