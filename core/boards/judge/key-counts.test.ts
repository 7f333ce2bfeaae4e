import fc from 'fast-check';
import { expect, test } from 'vitest';
import { countKeys } from './key-counts.ts';

test('counts every number as often as it stands there, and no other', () => {
  const key = fc.oneof(fc.integer({ min: 1, max: 9 }), fc.maxSafeInteger().map(Math.abs));
  fc.assert(
    fc.property(fc.array(key.filter((value) => value > 0)), key, (keys, other) => {
      const counts = countKeys(keys);
      for (const asked of [...keys, Math.max(1, other)]) {
        expect(counts.of(asked)).toBe(keys.filter((value) => value === asked).length);
      }
    }),
  );
});
