import { describe, expect, it } from 'vitest';
import type { EventSpec, LogEvent, NameOrder } from './event.ts';
import { movedBefore } from './name-order.ts';
import { replay } from './replay.ts';
import { childrenOf, smallGroups } from './roster.ts';

const stamped = (specs: readonly EventSpec[]): readonly LogEvent[] =>
  specs.map((spec, at) => ({ id: `e${at}`, classId: 'class', at: at + 1, by: 'desk', ...spec }));

const typed = ['Tova', 'bram', 'Ada'].map(
  (value): EventSpec => ({ kind: 'set', body: { of: 'child', id: value, field: 'name', value } }),
);
const groups = ['Oak', 'Maple'].map(
  (value): EventSpec => ({ kind: 'set', body: { of: 'group', id: value, field: 'name', value } }),
);
const by = (value: NameOrder): EventSpec => ({
  kind: 'set',
  body: { of: 'class', id: 'class', field: 'namesBy', value },
});

function names(...more: readonly EventSpec[]): readonly string[] {
  const state = replay('class', stamped([...typed, ...more]));
  return childrenOf(state, 'whole-class').map(({ name }) => name);
}

const seated = (what: string, before: string | null) => {
  const state = replay('class', stamped([...typed, by('seat')]));
  return movedBefore('child', childrenOf(state, 'whole-class'), what, before);
};

describe('the order of names', () => {
  it.each([
    ['by name, if nothing was said', [], ['Ada', 'bram', 'Tova']],
    ['as typed', [by('typed')], ['Tova', 'bram', 'Ada']],
    ['by seat, before any was given', [by('seat')], ['Tova', 'bram', 'Ada']],
    ['by seat', [by('seat'), ...seated('Ada', 'bram')], ['Tova', 'Ada', 'bram']],
    ['the last seat', [by('seat'), ...seated('Tova', null)], ['bram', 'Ada', 'Tova']],
  ] as const)('%s', (_, more, order) => {
    expect(names(...more)).toEqual(order);
  });

  it('has the groups of the day in her order', () => {
    const before = replay('class', stamped(groups));
    expect(smallGroups(before).map(({ id }) => id)).toEqual(['Oak', 'Maple']);
    const moved = movedBefore('group', smallGroups(before), 'Maple', 'Oak');
    const after = replay('class', stamped([...groups, ...moved]));
    expect(smallGroups(after).map(({ id }) => id)).toEqual(['Maple', 'Oak']);
  });

  it('changes nothing where nothing moves', () => {
    const { length } = seated('Ada', 'Ada');
    expect(length).toBe(0);
  });
});
