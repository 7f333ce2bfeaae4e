import { describe, expect, it } from 'vitest';
import { childId, classId, eventId, groupId } from '../ids.ts';
import { WHOLE_CLASS } from './class-state.ts';
import type { Setting } from './event.ts';
import { replay } from './replay.ts';
import { childrenOf, smallGroups } from './roster.ts';

function classOf(...settings: readonly Setting[]) {
  const events = settings.map((body, place) => ({
    id: eventId(`e${place}`),
    classId: classId('class'),
    at: place,
    by: 'desk',
    kind: 'set',
    body,
  }));
  return replay(classId('class'), events);
}

const state = classOf(
  { of: 'class', id: classId('class'), field: 'name', value: 'Room 4' },
  { of: 'group', id: groupId('moss'), field: 'name', value: 'Moss' },
  { of: 'group', id: groupId('fern'), field: 'name', value: 'Fern' },
  { of: 'child', id: childId('r'), field: 'name', value: 'Robin' },
  { of: 'child', id: childId('w'), field: 'name', value: 'Wren' },
  { of: 'child', id: childId('k'), field: 'name', value: 'K. T.' },
  { of: 'child', id: childId('r'), field: 'group', value: groupId('moss') },
  { of: 'child', id: childId('w'), field: 'group', value: groupId('moss') },
  { of: 'group', id: groupId('fern'), field: 'removed', value: true },
  { of: 'child', id: childId('w'), field: 'removed', value: true },
  { of: 'device', id: 'desk', field: 'name', value: 'Laptop' },
);
const names = (list: readonly { readonly name: string }[]) => list.map(({ name }) => name);

describe('the roster', () => {
  it('has the children of the whole class and of each group, without those removed', () => {
    expect(names(childrenOf(state, WHOLE_CLASS))).toEqual(['K. T.', 'Robin']);
    expect(names(childrenOf(state, groupId('moss')))).toEqual(['Robin']);
    expect(childrenOf(state, groupId('fern'))).toEqual([]);
  });

  it('knows what a device is called, and takes it for no child', () => {
    expect([...state.devices]).toEqual([['desk', 'Laptop']]);
    expect(state.children.has(childId('desk'))).toBe(false);
  });

  it('has the small groups without those removed, which are still kept', () => {
    expect(names(smallGroups(state))).toEqual(['Moss']);
    expect(state.groups.get(groupId('fern'))).toMatchObject({ name: 'Fern', removed: true });
    expect(state.children.get(childId('w'))).toMatchObject({
      name: 'Wren',
      group: 'moss',
      removed: true,
    });
  });
});
