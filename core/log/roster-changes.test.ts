import { describe, expect, it } from 'vitest';
import { SMALL_DRILL } from '../../test/arbitrary-events.ts';
import { childId, classId, drillId, eventId, groupId } from '../ids.ts';
import { SEQUENCE } from '../sequence/built-in.ts';
import { makeProgress } from '../sequence/progress.ts';
import { WHOLE_CLASS } from './class-state.ts';
import type { EventSpec, LogEvent, Setting } from './event.ts';
import { makeGroupPlace, progressOf } from './group-place.ts';
import { replay } from './replay.ts';
import { childrenOf, smallGroups } from './roster.ts';
import { groupBegun, groupOf, groupRemoved, sharedNames } from './roster-changes.ts';

function eventsOf(specs: readonly EventSpec[], from = 1): readonly LogEvent[] {
  return specs.map((spec, place) => ({
    id: eventId(`e${from + place}`),
    classId: classId('class'),
    at: from + place,
    by: 'desk',
    ...spec,
  }));
}

const set = (body: Setting): EventSpec => ({ kind: 'set', body });

const taught = eventsOf([
  set({
    of: 'group',
    id: WHOLE_CLASS,
    field: 'standing',
    value: makeGroupPlace(makeProgress(SEQUENCE, 30), SEQUENCE),
  }),
  set({ of: 'group', id: groupId('fern'), field: 'name', value: 'Fern' }),
  set({ of: 'child', id: childId('w'), field: 'name', value: 'Wren' }),
  set({ of: 'child', id: childId('w'), field: 'group', value: groupId('fern') }),
  set({ of: 'child', id: childId('r'), field: 'name', value: 'Robin' }),
  set({ of: 'child', id: childId('r'), field: 'group', value: groupId('fern') }),
  set({ of: 'child', id: childId('k'), field: 'name', value: 'wren' }),
]);
const state = replay(classId('class'), taught);

describe('a small group', () => {
  it('begins where the whole class stands, and goes its own way from there', () => {
    const after = replay(classId('class'), [
      ...taught,
      ...eventsOf(groupBegun(state, groupId('moss'), 'Moss'), 50),
    ]);
    const moss = after.groups.get(groupId('moss'));
    expect(moss?.name).toBe('Moss');
    expect(moss?.standing && progressOf(moss.standing, SEQUENCE).upTo).toBe(30);
  });

  it('has no place yet when the whole class has none', () => {
    const after = replay(
      classId('class'),
      eventsOf(groupBegun(replay(classId('class'), []), groupId('moss'), '')),
    );
    expect(after.groups.get(groupId('moss'))).toEqual({
      id: 'moss',
      name: '',
      removed: false,
      standing: null,
      place: null,
    });
  });

  it('is taken away without its children, who are in no group then; undoing that brings all back', () => {
    const removal = eventsOf(groupRemoved(state, groupId('fern')), 50);
    const after = replay(classId('class'), [...taught, ...removal]);
    expect(smallGroups(after)).toEqual([]);
    expect(childrenOf(after, WHOLE_CLASS).map(({ id, group }) => [id, group])).toEqual([
      ['r', null],
      ['k', null],
      ['w', null],
    ]);
    const undone = removal.map(({ id }): EventSpec => ({ kind: 'undone', body: { event: id } }));
    const back = replay(classId('class'), [...taught, ...removal, ...eventsOf(undone, 100)]);
    expect(back.groups).toEqual(state.groups);
    expect(back.children).toEqual(state.children);
  });

  it('holds no child any more once it is gone, even one that another device put there', () => {
    const gone = eventsOf(
      [set({ of: 'group', id: groupId('fern'), field: 'removed', value: true })],
      50,
    );
    const after = replay(classId('class'), [...taught, ...gone]);
    expect([...after.children.values()].map((child) => groupOf(after, child))).toEqual([
      null,
      null,
      null,
    ]);
    expect([...state.children.values()].map((child) => groupOf(state, child)?.name)).toEqual([
      'Fern',
      'Fern',
      undefined,
    ]);
  });
});

describe('a child who is moved', () => {
  it('keeps what was marked of it, and the drill stays that of the group that ran it', () => {
    const drill: readonly EventSpec[] = [
      {
        kind: 'begun',
        body: {
          drillId: drillId('d'),
          groupId: groupId('fern'),
          day: '2026-03-02',
          drill: SMALL_DRILL,
        },
      },
      {
        kind: 'marked',
        body: {
          drillId: drillId('d'),
          part: 'blending',
          place: 0,
          cards: ['m=M', 'a=AE', 't=T'],
          broke: 2,
          heard: null,
          child: childId('w'),
        },
      },
    ];
    const before = [...taught, ...eventsOf(drill, 50)];
    const moved = set({ of: 'child', id: childId('w'), field: 'group', value: null });
    const after = replay(classId('class'), [...before, ...eventsOf([moved], 100)]);
    expect(after.children.get(childId('w'))?.group).toBeNull();
    expect(after.drills).toEqual(replay(classId('class'), before).drills);
    expect(after.drills.get(drillId('d'))?.marks.map(({ child }) => child)).toEqual(['w']);
    expect(after.drills.get(drillId('d'))?.groupId).toBe('fern');
  });
});

describe('children of one name', () => {
  it('are told of, capitals aside, each name once', () => {
    expect(sharedNames([...state.children.values()])).toEqual(['Wren']);
    expect(sharedNames([])).toEqual([]);
  });
});
