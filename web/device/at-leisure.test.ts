import { expect, it } from 'vitest';
import { pacedEach } from '../../core/paced.ts';
import { atLeisure } from './at-leisure.ts';

const list = Array.from({ length: 100 }, (_, n) => n);

it('does all of it, with a pause before each piece, and tells how far it is', async () => {
  const shares: number[] = [];
  let done = 0;
  const pieces: number[] = [];
  const timer = setInterval(() => pieces.push(done));
  const pace = atLeisure((share) => shares.push(share), new AbortController().signal);
  await pace(pacedEach(list, () => done++, 10));
  clearInterval(timer);
  expect(done).toBe(100);
  expect(shares).toEqual([0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9]);
  expect(new Set(pieces).size).toBeGreaterThan(3);
});

it('does nothing more once it is stopped', async () => {
  const stop = new AbortController();
  let done = 0;
  const pace = atLeisure(() => {}, stop.signal);
  const outcome = await pace(
    pacedEach(
      list,
      () => {
        done += 1;
        if (done === 15) stop.abort();
      },
      10,
    ),
  );
  expect(outcome).toBeNull();
  expect(done).toBe(20);
});
