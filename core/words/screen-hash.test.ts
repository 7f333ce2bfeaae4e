import fc from 'fast-check';
import { expect, test } from 'vitest';
import { checkOf, hashCodes, makeRun, placeOf, SPACES, saltOf, sumRun } from './screen-hash.ts';

const codes = fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 1, maxLength: 30 });

test('the hash of a part of a run is the hash of that part alone', () => {
  fc.assert(
    fc.property(codes, fc.nat(29), fc.nat(29), fc.constantFrom(...SPACES), (all, a, b, space) => {
      const from = Math.min(a, b) % all.length;
      const to = Math.max(from + 1, Math.max(a, b) % (all.length + 1));
      const run = makeRun();
      run.codes.set(all);
      sumRun(run, all.length);
      const part = all.slice(from, to);
      const alone = hashCodes(part, part.length, space);
      expect(placeOf(run, from, to, saltOf(space))).toBe(alone.place);
      expect(checkOf(run, from, to, saltOf(space))).toBe(alone.check);
    }),
  );
});

test('the same codes hash apart in every space', () => {
  const places = SPACES.map((space) => hashCodes([1, 2, 3], 3, space).place);
  expect(new Set(places).size).toBe(SPACES.length);
});
