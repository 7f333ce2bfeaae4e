import fc from 'fast-check';
import { expect, it } from 'vitest';
import { atOnce, pacedEach } from './paced.ts';

const list = fc.array(fc.integer(), { maxLength: 60 });

it('goes through all of a list in its order, and never does more than so many between two pauses', () => {
  fc.assert(
    fc.property(list, fc.integer({ min: 1, max: 9 }), (all, atATime) => {
      const seen: number[] = [];
      let before = 0;
      const shares: number[] = [];
      const work = pacedEach(all, (one) => seen.push(one), atATime);
      for (let step = work.next(); !step.done; step = work.next()) {
        expect(seen.length - before).toBe(atATime);
        before = seen.length;
        shares.push(step.value);
      }
      expect(seen).toEqual(all);
      expect(seen.length - before).toBeLessThanOrEqual(atATime);
      expect(shares).toEqual([...shares].sort((left, right) => left - right));
      expect(shares.every((share) => share > 0 && share < 1)).toBe(true);
    }),
  );
});

it('does the same at once', () => {
  fc.assert(
    fc.property(list, (all) => {
      const seen: number[] = [];
      atOnce(pacedEach(all, (one) => seen.push(one), 3));
      expect(seen).toEqual(all);
    }),
  );
});
