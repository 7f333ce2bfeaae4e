import { expect, it } from 'vitest';
import { copyAgeSaid } from './copy-age.ts';

it.each([
  ['2026-10-05', '2026-10-05', 'Your last copy is from today.'],
  ['2026-10-05', '2026-10-18', 'Your last copy is from October 5.'],
  ['2026-10-05', '2026-10-19', 'Your last copy is from October 5. Save a new one?'],
  ['2026-12-31', '2027-01-13', 'Your last copy is from December 31, 2026.'],
  ['2025-10-05', '2026-10-05', 'Your last copy is from October 5, 2025. Save a new one?'],
])('of a copy of %s it is said on %s: %s', (day, today, said) => {
  expect(copyAgeSaid(day, today)).toBe(said);
});
