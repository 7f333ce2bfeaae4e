import { expect, it } from 'vitest';
import type { CardId } from './card-id.ts';
import { twinsIn } from './twins.ts';

const cases: readonly (readonly [readonly CardId[], readonly CardId[]])[] = [
  [
    ['th=TH', 'th=DH', 't=T'],
    ['th=TH', 'th=DH'],
  ],
  [
    ['s=S', 's=Z', 'ss=S'],
    ['s=S', 's=Z'],
  ],
  [
    ['e=EH', 'e=IY'],
    ['e=EH', 'e=IY'],
  ],
  [['e=EH', 'e=EH'], []],
  [['c=K', 'k=K', 'no=such'], []],
];

it.each(cases)('of %j the look-alikes are %j', (ids, twins) => {
  expect([...twinsIn(ids)].toSorted()).toEqual(twins.toSorted());
});
