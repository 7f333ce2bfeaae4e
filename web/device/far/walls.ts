import type { ClassId, DrillId } from '../../../core/ids.ts';
import { isObject } from '../../../core/log/is-value.ts';
import { TO_WALLS } from '../../../core/sharing/message.ts';
import { isIn, type Rights, WALL_FOR } from '../../../core/sharing/rights.ts';
import { placeForWall, planForWall, wishOfWall } from '../../../core/warm-up/for-wall.ts';
import type { Plan, SentPlace } from '../../../core/warm-up/sent.ts';
import { WARM_UP, WINDOWS } from './bridge.ts';
import { createPieces, piecesOf } from './live-pieces.ts';
import { giveWallKey, sealForWall, unsealForWall, type WallKey, wallKeyFrom } from './wall-key.ts';

/** The walls of a class, as a device that is in it speaks with them. */
export interface Walls {
  /** A window of this device has said something of a warm-up, on a channel of the browser. */
  say(value: unknown): void;
  /** A device of the class has said that it is there. */
  met(from: string): void;
  /** A device is gone. */
  left(from: string): void;
  /** What a wall has said, as a window would, with nothing in it that a wall may not say; else null. */
  hear(from: string, body: string): Promise<unknown>;
}

/** What speaking with walls needs. */
export interface WallsSpec {
  readonly classId: ClassId;
  /** This device's id. */
  readonly me: string;
  readonly rights: () => Rights | null;
  /** What the key of a warm-up is made from now; null when this device cannot make it. */
  readonly secretOf: (drillId: DrillId) => Promise<Uint8Array<ArrayBuffer> | null>;
  /** Says something live to all walls, or to the one of this id. */
  readonly sayTo: (to: string, body: string) => void;
  /** The server's clock in milliseconds. */
  readonly now: () => number;
}

/** A warm-up that a window of this device leads. */
interface Led {
  readonly plan: Plan;
  readonly place: SentPlace | null;
}

/**
 * Gives every wall that is there the key of the warm-up that is led on this device, and tells it where that
 * stands. Only an owner's or a teacher's device does: an aide's group never comes upon the wall of the class.
 */
export function createWalls(spec: WallsSpec): Walls {
  const { classId, me, rights, secretOf, sayTo, now } = spec;
  const pieces = createPieces();
  const there = new Map<string, string>();
  let led: Led | null = null;
  let planTold = '';
  let held: { readonly name: string; readonly key: WallKey } | null = null;
  let work: Promise<unknown> = Promise.resolve();
  return {
    say(value) {
      const [name, data] = Array.isArray(value) ? value : [];
      if (!isObject(data)) return;
      if (name === WARM_UP && data.kind === 'plan') {
        led = { plan: data.plan as Plan, place: null };
        // A plan is said when it is new, and when somebody asked who had missed it: the walls are told it again.
        planTold = '';
      } else if (name === WARM_UP && data.kind === 'place') {
        const place = data.place as SentPlace;
        if (led?.plan.key !== place.plan) return;
        led = { ...led, place };
        inTurn(() => tellPlace(data.granted));
      } else if (
        name === WINDOWS &&
        (data.kind === 'who' || data.kind === 'here' || data.kind === 'gone')
      ) {
        inTurn(() => tell([WINDOWS, data]));
      }
    },
    met(from) {
      const wall = rights()?.members.get(from);
      if (wall?.role !== 'wall' || !isIn(wall, now())) return;
      if (!there.has(from)) there.set(from, '');
      inTurn(() => tellPlace(null));
    },
    left(from) {
      there.delete(from);
    },
    async hear(from, body) {
      const wall = rights()?.members.get(from);
      const key = await keyNow();
      if (wall?.role !== 'wall' || !isIn(wall, now()) || key === null) return null;
      const bytes = await unsealForWall(key, classId, body);
      const value = bytes && pieces.take(from, bytes);
      const [name, data] = Array.isArray(value) ? value : [];
      if (!isObject(data)) return null;
      if (name === WARM_UP) {
        const wish = data.kind === 'ask' ? { kind: 'ask' } : wishOfWall(data, key.drillId);
        return wish && [WARM_UP, wish];
      }
      if (name !== WINDOWS || typeof data.from !== 'string') return null;
      if (data.kind === 'who' || data.kind === 'gone')
        return [WINDOWS, { kind: data.kind, from: data.from }];
      const isHere = data.kind === 'here' && data.role === 'stage';
      return isHere
        ? [WINDOWS, { kind: 'here', from: data.from, role: 'stage', drillId: key.drillId }]
        : null;
    },
  };

  function inTurn(what: () => Promise<void>): void {
    work = work.then(what).catch(() => {});
  }

  /** The key of the warm-up that is led here; null when no wall is to have it. */
  async function keyNow(): Promise<WallKey | null> {
    const role = rights()?.members.get(me)?.role;
    const place = led?.place && placeForWall(led.place);
    // A count begins at the clock: a warm-up of yesterday that a window still shows is for no wall.
    const isToday = place && place.count > now() - WALL_FOR;
    if (!led || !isToday || (role !== 'owner' && role !== 'teacher')) return null;
    const { drillId } = led.plan;
    const name = `${drillId} ${rights()?.epoch}`;
    if (held?.name === name) return held.key;
    const secret = await secretOf(drillId);
    if (secret === null) return null;
    held = { name, key: await wallKeyFrom(secret, classId, drillId) };
    return held.key;
  }

  /** Where the warm-up stands, before it its key and plan to whoever has them not. */
  async function tellPlace(granted: unknown): Promise<void> {
    if (there.size === 0) return;
    const key = await keyNow();
    if (key === null || !led?.place || !held) return;
    const secret = await secretOf(key.drillId);
    const { name } = held;
    let isNew = false;
    for (const [id, has] of there) {
      const wall = rights()?.members.get(id);
      if (has === name || !wall || secret === null) continue;
      sayTo(id, await giveWallKey(wall, classId, key.drillId, secret));
      there.set(id, name);
      isNew = true;
    }
    const { plan, place } = led;
    if (isNew || planTold !== plan.key)
      await tell([WARM_UP, { kind: 'plan', plan: planForWall(plan) }]);
    planTold = plan.key;
    await tell([WARM_UP, { kind: 'place', place: placeForWall(place), granted }]);
    if (isNew) await tell([WINDOWS, { kind: 'who', from: '' }]);
  }

  async function tell(value: unknown): Promise<void> {
    const key = there.size > 0 ? await keyNow() : null;
    if (key === null) return;
    for (const bytes of piecesOf(value)) sayTo(TO_WALLS, await sealForWall(key, classId, bytes));
  }
}
