import { expect, it } from 'vitest';
import type { CheckScore } from '../../core/checks/score-check.ts';
import type { CheckRecord } from '../../core/log/class-state.ts';
import { ratesOf } from './check-rates.ts';

/** Forty right of forty-two, ninety sounds, in so many seconds; null without a clock. */
function ratesIn(seconds: number | null) {
  const perMinute = (count: number) => (seconds === null ? null : (count * 60) / seconds);
  const record = { ended: { reached: 42, seconds } } as CheckRecord;
  const rates = { rightPerMinute: perMinute(40), soundsPerMinute: perMinute(90) };
  return ratesOf(record, rates as CheckScore);
}

it('tells what was right in a minute, from a quarter of a minute on', () => {
  expect(ratesIn(60)).toEqual({ right: 40, sounds: 90 });
  expect(ratesIn(15)).toEqual({ right: 160, sounds: 360 });
  expect(ratesIn(2)).toBeNull();
  expect(ratesIn(null)).toBeNull();
});
