import { describe, expect, it } from 'vitest';
import { SMALL_DRILL } from '../../test/arbitrary-events.ts';
import { childId, classId, drillId, groupId } from '../ids.ts';
import { WHOLE_CLASS } from '../log/class-state.ts';
import { mayOnWall, placeForWall, planForWall, wishOfWall } from './for-wall.ts';
import { NOBODY } from './lead.ts';
import { momentsOf } from './moments.ts';
import type { Plan, SentPlace } from './sent.ts';
import { standingAt } from './standing.ts';

const plan: Plan = {
  key: 'plan',
  classId: classId('class'),
  groupId: groupId('maple'),
  drillId: drillId('drill'),
  drill: SMALL_DRILL,
  dictated: [],
  who: [childId('Robin')],
};
const place: SentPlace = {
  plan: 'plan',
  standing: standingAt(momentsOf(SMALL_DRILL).length),
  blending: 'whole',
  asking: null,
  rehearsed: null,
  count: 7,
  by: 'desk',
  on: true,
  readers: [0],
  upcoming: [0],
};

describe('what a wall is told', () => {
  it('has no child and no group in it', () => {
    expect(planForWall(plan)).toEqual({ ...plan, groupId: WHOLE_CLASS, who: [] });
    expect(placeForWall(place)).toEqual({ ...place, on: false, readers: [], upcoming: [] });
  });

  it('is nothing of a warm-up that is only looked at', () => {
    expect(placeForWall({ ...place, rehearsed: [] })).toBeNull();
  });

  it('never makes it lead when nobody does', () => {
    expect(placeForWall({ ...place, by: NOBODY })?.by).not.toBe(NOBODY);
  });
});

describe('what a wall may ask', () => {
  const wish = { kind: 'wish', id: 'w', drillId: 'drill', from: 3 };
  it.each([
    [{ does: 'act', act: 'next' }, true],
    [{ does: 'act', act: 'back' }, true],
    [{ does: 'act', act: 'sweep' }, true],
    [{ does: 'act', act: 'pause' }, true],
    [{ does: 'act', act: 'correct' }, false],
    [{ does: 'act', act: 'skip' }, false],
    [{ does: 'act', act: { turn: 0 } }, false],
    [{ does: 'call', child: childId('Robin') }, false],
    [{ does: 'asking', mark: null }, false],
  ] as const)('of %j is heard: %s', (deed, isHeard) => {
    expect(wishOfWall({ ...wish, deed }, drillId('drill'))).toEqual(
      isHeard ? { ...wish, deed } : null,
    );
    expect(mayOnWall(deed)).toBe(isHeard);
  });

  it.each([
    [null],
    [{ ...wish, deed: null }],
    [{ ...wish, from: 'x', deed: { does: 'act', act: 'next' } }],
    [{ ...wish, drillId: 'another', deed: { does: 'act', act: 'next' } }],
    [{ ...wish, kind: 'place', deed: { does: 'act', act: 'next' } }],
  ])('is nothing when it is damaged or of another warm-up: %j', (value) => {
    expect(wishOfWall(value, drillId('drill'))).toBeNull();
  });

  it('brings nothing else with it', () => {
    const deed = { does: 'act', act: 'next', name: 'Robin' };
    const heard = wishOfWall({ ...wish, deed, note: 'Robin' }, drillId('drill'));
    expect(JSON.stringify(heard)).not.toContain('Robin');
  });
});
