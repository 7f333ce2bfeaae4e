import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arbitraryEvents } from '../../test/arbitrary-events.ts';
import { classId, eventId } from '../ids.ts';
import type { LogEvent } from './event.ts';
import { mergeEvents } from './merge.ts';
import { replay } from './replay.ts';

/** Logs of one class that share some events, as devices do that have been in touch. */
const parts = (count: number) =>
  arbitraryEvents().chain((events) =>
    fc.array(fc.subarray([...events]), { minLength: count, maxLength: count }),
  );

/** Logs written by hand, in which one id may stand for two different events. */
const clashing = fc.array(
  fc.record({
    id: fc.constantFrom(eventId('a'), eventId('b')),
    classId: fc.constant(classId('class')),
    at: fc.nat(1),
    by: fc.constantFrom('desk', 'tablet'),
    kind: fc.constant('noted'),
    body: fc.constantFrom({ text: 'one' }, { text: 'two' }),
  }),
  { maxLength: 4 },
);

describe('merging', () => {
  it('is commutative', () => {
    fc.assert(
      fc.property(
        fc.oneof(parts(2), fc.array(clashing, { minLength: 2, maxLength: 2 })),
        ([a, b]) => {
          expect(mergeEvents(a ?? [], b ?? [])).toEqual(mergeEvents(b ?? [], a ?? []));
        },
      ),
    );
  });

  it('is associative', () => {
    fc.assert(
      fc.property(
        fc.oneof(parts(3), fc.array(clashing, { minLength: 3, maxLength: 3 })),
        ([a = [], b = [], c = []]) => {
          expect(mergeEvents(mergeEvents(a, b), c)).toEqual(mergeEvents(a, mergeEvents(b, c)));
        },
      ),
    );
  });

  it('is idempotent', () => {
    fc.assert(
      fc.property(
        fc.oneof(parts(1), fc.array(clashing, { minLength: 1, maxLength: 1 })),
        ([a = []]) => {
          const once = mergeEvents(a, []);
          expect(mergeEvents(a, a)).toEqual(once);
          expect(mergeEvents(once, a)).toEqual(once);
        },
      ),
    );
  });

  it('loses no event and makes none up', () => {
    fc.assert(
      fc.property(parts(2), ([a = [], b = []]) => {
        const merged = mergeEvents(a, b);
        const ids = (events: readonly LogEvent[]) => events.map(({ id }) => id).sort();
        expect(ids(merged)).toEqual([...new Set([...ids(a), ...ids(b)])].sort());
        expect(merged.every((event) => a.includes(event) || b.includes(event))).toBe(true);
      }),
    );
  });

  it('gives one class on both devices', () => {
    fc.assert(
      fc.property(parts(2), ([a = [], b = []]) => {
        expect(replay(classId('class'), mergeEvents(a, b))).toEqual(
          replay(classId('class'), [...b, ...a]),
        );
      }),
    );
  });
});
