import { expect, test } from 'vitest';
import { parseGrade } from './parse-grade.ts';

test.each([
  ['K', 'K'],
  ['kindergarten', 'K'],
  ['Grade K', 'K'],
  ['1', '1'],
  ['grade 2', '2'],
  ['Gr. 3', '3'],
  ['3rd', '3'],
  ['1st grade', '1'],
  ['4', null],
  ['12', null],
  ['first', null],
  ['', null],
])('%s is read as %s', (text, grade) => {
  expect(parseGrade(text)).toBe(grade);
});
