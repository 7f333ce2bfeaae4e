import { describe, expect, it } from 'vitest';
import { drillId, type GroupId, groupId } from '../ids.ts';
import { isToFollow } from './follow.ts';

const [moss, fern] = [groupId('moss'), groupId('fern')];
const drill = (id: string, group: GroupId) => ({
  drillId: drillId(id),
  groupId: group,
  rehearsed: null,
});

describe('a warm-up on another device', () => {
  it.each([
    ['the one under way here', drill('one', moss), drill('one', moss), true],
    ['the group’s, when none is under way here', null, drill('one', fern), true],
    ['another group’s', null, drill('one', moss), false],
    ['another than is under way here', drill('one', fern), drill('two', fern), false],
  ])('is shown or not: %s', (_, own, other, shown) => {
    expect(isToFollow(own, other, { groupId: fern, showsAny: false })).toBe(shown);
  });

  it('is shown whichever it is, where that was asked for, but never one that is just looked at', () => {
    const any = { groupId: fern, showsAny: true };
    expect(isToFollow(drill('one', fern), drill('two', moss), any)).toBe(true);
    expect(isToFollow(null, { ...drill('two', moss), rehearsed: [] }, any)).toBe(false);
  });
});
