import { expect, it } from 'vitest';
import { estimateSaid, namesSaid, shareSaid } from './said.ts';

it('says shares in whole percent, with how sure they are', () => {
  expect(shareSaid(0.785)).toBe('79%');
  expect(estimateSaid({ p: 0.78, low: 0.614, high: 0.9 })).toBe(
    'about 78% right, likely between 61% and 90%',
  );
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
