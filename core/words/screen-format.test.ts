import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  categoryIndexOf,
  decodeScreen,
  encodeMark,
  encodeScreen,
  isStopMark,
  markAt,
  reachOf,
  SCREEN_CATEGORIES,
  SCREEN_SCOPES,
  type ScreenKey,
} from './screen-format.ts';
import { makeRun, SPACES, saltOf, sumRun } from './screen-hash.ts';

const mark = fc.record({
  verdict: fc.constantFrom('stop' as const, 'ask' as const),
  category: fc.constantFrom(...SCREEN_CATEGORIES),
  scope: fc.constantFrom(...SCREEN_SCOPES),
});
const key: fc.Arbitrary<ScreenKey> = fc.record({
  codes: fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 1, maxLength: 12 }),
  space: fc.constantFrom(...SPACES),
  mark: fc.option(mark),
});

function look(data: ReturnType<typeof encodeScreen>, { codes, space }: ScreenKey): number {
  const run = makeRun();
  run.codes.set(codes);
  sumRun(run, codes.length);
  return markAt(decodeScreen(data), run, 0, codes.length, saltOf(space));
}

describe('the shipped screen', () => {
  test('a mark comes back from its number', () => {
    fc.assert(
      fc.property(mark, (one) => {
        const number = encodeMark(one);
        expect(isStopMark(number)).toBe(one.verdict === 'stop');
        expect(SCREEN_CATEGORIES[categoryIndexOf(number)]).toBe(one.category);
        expect(SCREEN_SCOPES[reachOf(number)]).toBe(one.scope);
      }),
    );
  });

  test('every key is found with its mark, and other keys are not', () => {
    const distinct = fc.uniqueArray(key, {
      minLength: 2,
      maxLength: 40,
      selector: ({ codes, space }) => `${space} ${codes.join(' ')}`,
    });
    fc.assert(
      fc.property(distinct, ([absent, ...keys]) => {
        const data = encodeScreen(keys);
        for (const one of keys) expect(look(data, one)).toBe(one.mark ? encodeMark(one.mark) : 0);
        expect(look(data, absent as ScreenKey)).toBe(-1);
      }),
    );
  });

  test('a key given twice keeps the stricter mark, in either order', () => {
    const base = { codes: [1, 2, 3], space: 'plain' } as const;
    const ask = { verdict: 'ask', category: 'insult', scope: 'edge' } as const;
    const stop = { verdict: 'stop', category: 'slur', scope: 'exact' } as const;
    for (const marks of [
      [ask, stop],
      [stop, ask],
    ]) {
      const data = encodeScreen(marks.map((one) => ({ ...base, mark: one })));
      expect(look(data, { ...base, mark: null })).toBe(encodeMark(stop));
    }
  });

  test('the signs hold no vowel, so that no word can be read in them', () => {
    fc.assert(
      fc.property(fc.array(key, { maxLength: 30 }), (keys) => {
        for (const [, hashes] of encodeScreen(keys)) expect(hashes).not.toMatch(/[aeiouy]/i);
      }),
    );
  });

  test('damaged data throw', () => {
    expect(() => decodeScreen([[1, 'abcdefg']])).toThrow('damaged');
    expect(() => decodeScreen([[1, '0123']])).toThrow('damaged');
  });
});
