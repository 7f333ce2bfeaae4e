import { expect, it } from 'vitest';
import { textHere } from './text-here.ts';

const BRITISH = ['southern-british'] as const;

it.each([
  ['Neighbors are good to have.', 'Neighbours are good to have.'],
  ['My favorite, gray-haired neighbor!', 'My favourite, grey-haired neighbour!'],
  ['The doctor has a bath.', 'The doctor has a bath.'],
])('%s', (american, british) => {
  expect(textHere(american, BRITISH)).toBe(british);
  expect(textHere(british, BRITISH)).toBe(british);
  expect(textHere(american, ['pin-pen'])).toBe(american);
});
