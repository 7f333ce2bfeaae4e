import { describe, expect, it } from 'vitest';
import { type ChildId, childId, classId, eventId, groupId } from '../ids.ts';
import { WHOLE_CLASS } from './class-state.ts';
import type { EventSpec, LogEvent, NameOrder } from './event.ts';
import { childMovedBefore, groupMovedBefore } from './name-order.ts';
import { replay } from './replay.ts';
import { childrenOf, smallGroups } from './roster.ts';

const stamped = (specs: readonly EventSpec[]): readonly LogEvent[] =>
  specs.map((spec, at) => ({
    id: eventId(`e${at}`),
    classId: classId('class'),
    at: at + 1,
    by: 'desk',
    ...spec,
  }));

const typed = [childId('Tova'), childId('bram'), childId('Ada')].map(
  (value): EventSpec => ({ kind: 'set', body: { of: 'child', id: value, field: 'name', value } }),
);
const groups = ['Oak', 'Maple'].map(
  (value): EventSpec => ({
    kind: 'set',
    body: { of: 'group', id: groupId(value), field: 'name', value },
  }),
);
const by = (value: NameOrder): EventSpec => ({
  kind: 'set',
  body: { of: 'class', id: classId('class'), field: 'namesBy', value },
});

function names(...more: readonly EventSpec[]): readonly string[] {
  const state = replay(classId('class'), stamped([...typed, ...more]));
  return childrenOf(state, WHOLE_CLASS).map(({ name }) => name);
}

const seated = (what: ChildId, before: ChildId | null) => {
  const state = replay(classId('class'), stamped([...typed, by('seat')]));
  return childMovedBefore(childrenOf(state, WHOLE_CLASS), what, before);
};

describe('the order of names', () => {
  it.each([
    ['by name, if nothing was said', [], ['Ada', 'bram', 'Tova']],
    ['as typed', [by('typed')], ['Tova', 'bram', 'Ada']],
    ['by seat, before any was given', [by('seat')], ['Tova', 'bram', 'Ada']],
    ['by seat', [by('seat'), ...seated(childId('Ada'), childId('bram'))], ['Tova', 'Ada', 'bram']],
    ['the last seat', [by('seat'), ...seated(childId('Tova'), null)], ['bram', 'Ada', 'Tova']],
  ] as const)('%s', (_, more, order) => {
    expect(names(...more)).toEqual(order);
  });

  it('has the groups of the day in her order', () => {
    const before = replay(classId('class'), stamped(groups));
    expect(smallGroups(before).map(({ id }) => id)).toEqual(['Oak', 'Maple']);
    const moved = groupMovedBefore(smallGroups(before), groupId('Maple'), groupId('Oak'));
    const after = replay(classId('class'), stamped([...groups, ...moved]));
    expect(smallGroups(after).map(({ id }) => id)).toEqual(['Maple', 'Oak']);
  });

  it('changes nothing where nothing moves', () => {
    const { length } = seated(childId('Ada'), childId('Ada'));
    expect(length).toBe(0);
  });
});
