import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Followed, NOTHING, takeBatch, traceAfter } from './follower.ts';
import type { KeptRecord } from './record.ts';

const kept = (seq: number): KeptRecord => ({
  id: `r${seq}`,
  writer: 'w',
  count: seq,
  epoch: 1,
  lane: 'run',
  body: 'A',
  signature: 'A',
  seq,
  at: seq,
});
const batch = (from: number, to: number) => ({
  from,
  to,
  records: Array.from({ length: to - from }, (_, n) => kept(from + 1 + n)),
});

describe('following a class', () => {
  it('has every record once and in order, however batches repeat and overlap', () => {
    const spans = fc.array(fc.tuple(fc.nat(30), fc.integer({ min: 0, max: 9 })), { maxLength: 40 });
    fc.assert(
      fc.property(spans, (list) => {
        let followed: Followed = NOTHING;
        const seen: number[] = [];
        for (const [from, length] of list) {
          const taken = takeBatch(followed, batch(from, from + length));
          expect(taken === null).toBe(from > followed.cursor);
          if (taken === null) continue;
          followed = taken.followed;
          seen.push(...taken.fresh.map(({ seq }) => seq));
        }
        expect(seen).toEqual(Array.from({ length: followed.cursor }, (_, n) => n + 1));
        expect(followed.trace).toBe(seen.reduce((trace, seq) => traceAfter(trace, `r${seq}`), 0));
      }),
    );
  });

  it('steps over places of which nothing is kept, also when it stands among them', () => {
    const records = [kept(1), { seq: 2, to: 5, trace: 77 }, kept(6)];
    const whole = takeBatch(NOTHING, { from: 0, to: 6, records });
    expect(whole).toEqual({
      followed: { cursor: 6, trace: traceAfter(77, 'r6') },
      fresh: [kept(1), kept(6)],
    });
    const rest = [{ seq: 4, to: 5, trace: 77 }, kept(6)];
    expect(takeBatch({ cursor: 3, trace: 9 }, { from: 3, to: 6, records: rest })?.followed).toEqual(
      whole?.followed,
    );
    expect(takeBatch({ cursor: 4, trace: 9 }, { from: 3, to: 6, records: rest })?.followed).toEqual(
      whole?.followed,
    );
  });

  it.each([
    [
      'a run that ends before it begins',
      { from: 5, to: 6, records: [{ seq: 6, to: 5, trace: 1 }] },
    ],
    ['a hole before it', batch(6, 8)],
    ['a hole in it', { from: 5, to: 8, records: [kept(6), kept(8)] }],
    ['too few', { from: 5, to: 8, records: [kept(6), kept(7)] }],
    ['another order', { from: 5, to: 7, records: [kept(7), kept(6)] }],
    ['a turn back', { from: 5, to: 3, records: [] }],
  ])('gives up the connection on %s', (_, given) => {
    expect(takeBatch({ cursor: 5, trace: 9 }, given)).toBeNull();
  });

  it('tells the same records in another order, or others among them, by their trace', () => {
    const ids = fc.uniqueArray(fc.string({ minLength: 1 }), { minLength: 2, maxLength: 30 });
    const traceOf = (list: readonly string[]) => list.reduce(traceAfter, 0);
    fc.assert(
      fc.property(ids, fc.nat(), (list, chance) => {
        const place = chance % (list.length - 1);
        const [one = '', next = ''] = list.slice(place, place + 2);
        const before = list.slice(0, place);
        const rest = list.slice(place + 2);
        expect(traceOf([...before, next, one, ...rest])).not.toBe(traceOf(list));
        expect(traceOf([...before, `${one}'`, next, ...rest])).not.toBe(traceOf(list));
      }),
    );
  });
});
