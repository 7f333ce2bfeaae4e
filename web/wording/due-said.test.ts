import { expect, it } from 'vitest';
import { dueSaid } from './due-said.ts';

it.each<[number | null, string]>([
  [null, ''],
  [100, 'today'],
  [101, 'tomorrow'],
  [112, 'in 12 days'],
  [99, 'since yesterday'],
  [95, 'for 5 days'],
])('due on day %o, on day 100 it reads %j', (due, said) => {
  expect(dueSaid(due, 100)).toBe(said);
});
