import { expect, it } from 'vitest';
import { parseThresholds } from './parse-thresholds.ts';

it('reads percents, with or without their sign', () => {
  expect(parseThresholds('90', ' 70 % ')).toEqual({ secure: 0.9, shaky: 0.7 });
  expect(parseThresholds('80', '80')).toEqual({ secure: 0.8, shaky: 0.8 });
});

it.each([
  ['', '60', 'Write two whole numbers'],
  ['100', '60', 'Write two whole numbers'],
  ['80', 'sixty', 'Write two whole numbers'],
  ['80', '0', 'Write two whole numbers'],
  ['60', '80', 'write 60 or less there'],
])('of %j and %j it says what to write', (secure, shaky, said) => {
  const read = parseThresholds(secure, shaky);
  expect('problem' in read && read.problem).toContain(said);
});
