import fc from 'fast-check';
import { expect, it } from 'vitest';
import { drillId } from '../../../core/ids.ts';
import { makeDrillQuery, parseDrillQuery } from './drill-query.ts';

it('names the same warm-up once written into an address and read again', () => {
  fc.assert(
    fc.property(fc.string(), (id) => {
      expect(parseDrillQuery(makeDrillQuery(drillId(id)))).toBe(id.toWellFormed());
    }),
  );
});

it('names none when the address asks for nothing', () => {
  expect(parseDrillQuery('')).toBeNull();
});
