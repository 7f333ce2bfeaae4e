import { signal } from '@preact/signals';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { change, changeAsOne, undoLast } from './undo.ts';

describe('undo', () => {
  it('takes back changes one by one, the last first', () => {
    fc.assert(
      fc.property(fc.array(fc.integer(), { minLength: 1, maxLength: 20 }), (values) => {
        const value = signal(Number.NaN);
        const seen = [value.value];
        for (const next of values) {
          if (next === value.value) continue;
          change(value, next, `to ${next}`);
          seen.push(next);
        }
        for (const before of seen.toReversed().slice(1)) {
          undoLast();
          expect(value.value).toBe(before);
        }
      }),
    );
  });

  it('takes back together what was made as one change, and only that', () => {
    const [one, other] = [signal('a'), signal(1)];
    change(one, 'b', 'b');
    changeAsOne('both', () => {
      change(one, 'c', 'c');
      change(other, 2, '2');
      change(one, 'd', 'd');
    });
    changeAsOne('nothing', () => {});
    expect(undoLast()).toBe('both');
    expect([one.value, other.value]).toEqual(['b', 1]);
    expect(undoLast()).toBe('b');
    expect(one.value).toBe('a');
  });

  it('has nothing to take back when all was taken back', () => {
    while (undoLast() !== null);
    const value = signal('a');
    change(value, 'b', 'b');
    expect(undoLast()).toBe('b');
    expect(undoLast()).toBeNull();
    expect(value.value).toBe('a');
  });
});
