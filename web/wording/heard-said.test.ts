import { expect, it } from 'vitest';
import { heardSaid } from './heard-said.ts';

it.each([
  ['IH', 'said /ĭ/'],
  ['left-out', 'left it out'],
  ['K S', 'said /ks/'],
  ['mm', 'said mm'],
])('%s is told as: %s', (heard, said) => {
  expect(heardSaid(heard, 'classroom')).toBe(said);
});
