import { expect, it } from 'vitest';
import type { CardId } from './card-id.ts';
import { lettersInWord } from './letters-in-word.ts';

it.each<[readonly CardId[], string]>([
  [['sh=SH', 'i=IH', 'p=P'], 'sh0 i1 p2'],
  [['st=S+T', 'o=AA', 'p=P'], 'st0 o1 p2'],
  [['m=M', 'a_e=EY', 'k=K'], 'm0 a1 k2 e1'],
  [['a_e=EY'], 'a0 e0'],
  [['k=K', 'i=IH', 't=T', 'e_e=IY', 'n=N'], 'k0 i1 t2 e3 n4 e3'],
  [[], ''],
])('%j is read %s', (cards, said) => {
  expect(
    lettersInWord(cards)
      .map(({ letters, at }) => `${letters}${at}`)
      .join(' '),
  ).toBe(said);
});
