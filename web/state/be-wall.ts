import { openBridge } from '../device/far/bridge.ts';
import type { OpenedInvitation } from '../device/far/invitation.ts';
import type { OwnDevice } from '../device/far/own-device.ts';
import { createSharedClass } from '../device/far/shared-class.ts';
import { openWall } from '../device/far/wall.ts';
import { newId } from '../device/log/ids.ts';
import { connect, wait } from './in-step.ts';
import { lookAtClass, openLastClass } from './open-class.ts';
import { linkTo } from './route.ts';
import { AS_WALL, forgotten, wall } from './wall.ts';

/**
 * This window becomes a wall by an invitation, and shows the stage. An empty class in memory stands in for
 * the real one, so that nothing could be written to any log of this device.
 */
export async function beWall(
  opened: OpenedInvitation,
  own: OwnDevice,
): Promise<{ readonly done: true } | { readonly why: string }> {
  const { classId, founder } = opened;
  const spec = { classId, own, founder, invitation: null, newId };
  const bridge = openBridge((value) => wall.peek()?.say(value));
  try {
    const made = await openWall({
      classId,
      own,
      coming: await createSharedClass(spec).comeIn(opened),
      connect,
      now: Date.now,
      wait,
      onHeard: bridge.hear,
      onReached: bridge.reached,
      onForgotten(why) {
        bridge.close();
        if (wall.peek() === null) return;
        wall.value = null;
        forgotten.value = why;
        void openLastClass();
      },
    });
    await lookAtClass(classId, []);
    forgotten.value = null;
    wall.value = made;
  } catch (error) {
    return { why: error instanceof Error ? error.message : 'lost' };
  }
  location.hash = linkTo('stage', AS_WALL);
  return { done: true };
}
