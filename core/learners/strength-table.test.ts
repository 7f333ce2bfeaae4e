import { expect, it } from 'vitest';
import { moveStrength } from './strength.ts';
import { StrengthTable } from './strength-table.ts';

it('keeps its strengths when it grows', () => {
  const table = new StrengthTable();
  const rows = Array.from({ length: 1000 }, (_, n) => table.begin(n, 1, n));
  rows.forEach((row, n) => {
    expect(table.strengthAt(row)).toEqual({
      mean: n,
      variance: 1,
      day: n,
      practised: Number.NEGATIVE_INFINITY,
      times: 0,
      days: 0,
      told: 0,
    });
  });
});

it('changes one strength and no other', () => {
  const table = new StrengthTable();
  const [before, moved, after] = [1, 2, 3].map((mean) => table.begin(mean, 0.5, 0));
  moveStrength(table.numbers, moved as number, 2, 0.1);
  expect(table.strengthAt(moved)).toMatchObject({ mean: 3, variance: 0.475, told: 1 });
  expect(table.strengthAt(before)).toMatchObject({ mean: 1, variance: 0.5, told: 0 });
  expect(table.strengthAt(after)).toMatchObject({ mean: 3, variance: 0.5, told: 0 });
});
