import { expect, it } from 'vitest';
import { namesSaid, shareSaid } from './said.ts';

it('says shares in whole percent', () => {
  expect(shareSaid(0.785)).toBe('79%');
});

it.each<[readonly string[], string]>([
  [[], ''],
  [['Tam'], 'Tam'],
  [['Tam', 'Wren'], 'Tam and Wren'],
  [['Tam', 'Wren', 'Bram', 'Ines'], 'Tam, Wren, Bram and Ines'],
  [['Tam', 'Wren', 'Bram', 'Ines', 'Sol'], 'Tam, Wren, Bram and 2 more'],
])('names %j', (names, said) => {
  expect(namesSaid(names)).toBe(said);
});
