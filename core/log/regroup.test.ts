import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ChildId, childId, classId, eventId, type GroupId, groupId } from '../ids.ts';
import type { EventSpec, LogEvent } from './event.ts';
import { groupMoves } from './group-history.ts';
import { regroup } from './regroup.ts';
import { replay } from './replay.ts';
import { childrenOf, smallGroups } from './roster.ts';

const CHILDREN = ['tam', 'wren', 'bram', 'ines', 'sol', 'pia'].map(childId);

const WILLOW = groupId('willow');
const ALDER = groupId('alder');

/** A class from what happened, a second apart. */
function classOf(specs: readonly EventSpec[]) {
  return replay(classId('room'), eventsOf(specs));
}

function eventsOf(specs: readonly EventSpec[]): readonly LogEvent[] {
  return specs.map((spec, n) => ({
    id: eventId(`e${String(n).padStart(4, '0')}`),
    classId: classId('room'),
    at: (n + 1) * 1000,
    by: 'desk',
    ...spec,
  }));
}

const named = (id: ChildId): EventSpec => ({
  kind: 'set',
  body: { of: 'child', id, field: 'name', value: id },
});
const begins = (id: GroupId): EventSpec => ({
  kind: 'set',
  body: { of: 'group', id, field: 'name', value: id },
});
const put = (id: ChildId, value: GroupId | null): EventSpec => ({
  kind: 'set',
  body: { of: 'child', id, field: 'group', value },
});

const roster = [begins(WILLOW), begins(ALDER), ...CHILDREN.map(named)];
const began = [
  ...roster,
  put(childId('tam'), WILLOW),
  put(childId('wren'), WILLOW),
  put(childId('bram'), ALDER),
  put(childId('ines'), ALDER),
];

function counter(): () => GroupId {
  let n = 0;
  return () => groupId(`new ${++n}`);
}

const membersOf = (state: ReturnType<typeof classOf>) =>
  smallGroups(state).map(({ id }) => [id, childrenOf(state, id).map((child) => child.id)]);

describe('new groups', () => {
  it('keep a group for those who share most with it, and begin what is missing', () => {
    const { homes, specs } = regroup(
      classOf(began),
      [
        [childId('bram'), childId('ines'), childId('tam')],
        [childId('pia'), childId('sol')],
        [childId('wren')],
      ],
      counter(),
    );
    expect(homes.map((home) => home?.id ?? null)).toEqual(['alder', null, 'willow']);
    expect(membersOf(classOf([...began, ...specs]))).toEqual([
      ['willow', ['wren']],
      ['alder', ['bram', 'ines', 'tam']],
      ['new 1', ['pia', 'sol']],
    ]);
  });

  it('use a group that nobody is in before they begin one', () => {
    const { homes } = regroup(
      classOf(roster),
      [[childId('tam')], [childId('wren')], [childId('bram')]],
      counter(),
    );
    expect(homes.map((home) => home?.id ?? null)).toEqual(['willow', 'alder', null]);
  });

  it('ask for nothing where everyone is there already, and begin none for nobody', () => {
    const state = classOf(began);
    expect(
      regroup(
        state,
        [[childId('tam'), childId('wren')], [childId('ines'), childId('bram')], []],
        counter(),
      ).specs,
    ).toEqual([]);
  });

  it('put every child where it was meant to be, whatever was before, and move no other', () => {
    const place = fc.constantFrom(WILLOW, ALDER, null);
    fc.assert(
      fc.property(
        fc.array(place, { minLength: 6, maxLength: 6 }),
        fc.array(fc.integer({ min: 0, max: 3 }), { minLength: 6, maxLength: 6 }),
        (before, wanted) => {
          const specs = [...roster, ...CHILDREN.map((id, at) => put(id, before[at] ?? null))];
          const groups = [0, 1, 2].map((n) => CHILDREN.filter((_, at) => wanted[at] === n));
          const made = regroup(classOf(specs), groups, counter());
          const after = classOf([...specs, ...made.specs]);
          const homeOf = (id: ChildId | undefined) =>
            after.children.get(id ?? childId(''))?.group ?? null;
          for (const members of groups) {
            expect(new Set(members.map(homeOf)).size).toBeLessThanOrEqual(1);
            if (members.length > 0) expect(homeOf(members[0])).not.toBeNull();
          }
          const homes = groups.filter((one) => one.length > 0).map(([first]) => homeOf(first));
          expect(new Set(homes).size).toBe(homes.length);
          CHILDREN.forEach((id, at) => {
            if (wanted[at] === 3) expect(homeOf(id)).toBe(before[at] ?? null);
          });
        },
      ),
    );
  });
});

describe('the history of groups', () => {
  it('has every move, the latest first, from where to where', () => {
    const moves = groupMoves(
      classOf([...began, put(childId('tam'), ALDER), put(childId('wren'), null)]),
    );
    expect(moves.slice(0, 3).map(({ child, from, to }) => [child, from, to])).toEqual([
      ['wren', 'willow', null],
      ['tam', 'willow', 'alder'],
      ['ines', null, 'alder'],
    ]);
    expect(moves).toHaveLength(6);
  });

  it('leaves out what changed nothing and what was taken back', () => {
    const specs = [...began, put(childId('tam'), WILLOW), put(childId('tam'), ALDER)];
    const last = eventsOf(specs).at(-1)?.id ?? eventId('');
    const state = classOf([...specs, { kind: 'undone', body: { event: last } }]);
    expect(groupMoves(state)).toHaveLength(4);
  });
});
