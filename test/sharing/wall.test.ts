import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { classId as asClassId, childId, drillId, eventId, groupId } from '../../core/ids.ts';
import type { LogEvent } from '../../core/log/event.ts';
import { WALL_FOR } from '../../core/sharing/rights.ts';
import { callNobody } from '../../core/warm-up/calling.ts';
import { momentsOf } from '../../core/warm-up/moments.ts';
import type { Running } from '../../core/warm-up/run-state.ts';
import { placeOf, planFor } from '../../core/warm-up/sent.ts';
import { standingAt } from '../../core/warm-up/standing.ts';
import { makePass } from '../../server/identity.ts';
import { type Served, serveClasses } from '../../server/serve.ts';
import { WARM_UP, WINDOWS } from '../../web/device/far/bridge.ts';
import { makeKeys } from '../../web/device/far/cipher.ts';
import { ownDevice } from '../../web/device/far/own-device.ts';
import { createSharedClass } from '../../web/device/far/shared-class.ts';
import { openWall } from '../../web/device/far/wall.ts';
import { createWalls, type Walls } from '../../web/device/far/walls.ts';
import { SMALL_DRILL } from '../arbitrary-events.ts';
import { sqliteForTest } from './databases.ts';
import { FarDevice, newId } from './far-device.ts';
import { RawDevice } from './raw-device.ts';

const given = sqliteForTest();
let served: Served;
let pass: string;
let serverAhead = 0;
const port = () => served.port;

beforeAll(async () => {
  const { db, word } = given.open();
  served = await serveClasses({
    ...{ db, word, folder: null, host: '127.0.0.1', port: 0, tls: null },
    ...{ now: () => Date.now() + serverAhead, appendsPerSecond: 1000, arrivalsPerSecond: 1000 },
  });
  pass = await makePass(db, 100);
});
afterAll(async () => {
  await served.stop();
  given.remove();
});

/** A warm-up that is led at a desk, with a child who reads. */
function led(classId: ReturnType<typeof asClassId>, at: number, count = Date.now()): Running {
  const standing = standingAt(momentsOf(SMALL_DRILL).length, at);
  const calling = { on: true, readers: [childId('Robin')], upcoming: [], calls: [] };
  return {
    ...{ classId, groupId: groupId('maple'), drillId: drillId('drill'), drill: SMALL_DRILL },
    ...{ standing, blending: 'whole', calling: { ...callNobody([]), ...calling }, dictated: [] },
    ...{ asking: null, rehearsed: null, count, by: 'desk' },
  };
}

/** What a window that leads says of how it stands. */
function said(walls: Walls, running: Running): void {
  const plan = planFor(running, null, `plan of ${running.drillId}`);
  walls.say([WARM_UP, { kind: 'plan', plan }]);
  walls.say([WARM_UP, { kind: 'place', place: placeOf(running, plan), granted: null }]);
}

/** A class with a device of this role that leads, and a wall in it. */
async function classWithWall(role: 'owner' | 'aide' = 'owner') {
  const classId = asClassId(newId());
  const owner = await FarDevice.begin(port, classId, pass);
  const desk = role === 'owner' ? owner : await owner.letIn(role);
  const fromWall: unknown[] = [];
  const walls = createWalls({
    classId,
    me: desk.own.id,
    rights: () => desk.shared.rights(),
    secretOf: (drill) => desk.shared.wallSecret(drill),
    sayTo: (to, body) => desk.far.sayTo(to, body),
    now: () => desk.far.now(),
  });
  const met: string[] = [];
  desk.hears = {
    onLive(from, value) {
      if (value === 'here') met.push(from);
      if (value === 'here') walls.met(from);
      if (value === null) walls.left(from);
    },
    onSealed: (from, body) => void walls.hear(from, body).then((value) => fromWall.push(value)),
  };
  const invitation = await owner.invite('wall');
  const own = await ownDevice(await makeKeys(false), newId());
  const spec = { classId, own, founder: owner.own.id, invitation: null, newId };
  const shown: unknown[] = [];
  const forgotten: string[] = [];
  const wall = await openWall({
    classId,
    own,
    coming: await createSharedClass(spec).comeIn(invitation),
    connect: () => owner.connect(),
    now: Date.now,
    wait: (ms) => new Promise((resolve) => setTimeout(resolve, Math.min(ms, 50))),
    onHeard: (_, value) => shown.push(value),
    onReached() {},
    onForgotten: (why) => forgotten.push(why),
  });
  const end = () => {
    wall.forget();
    desk.close();
    owner.close();
  };
  return {
    classId,
    owner,
    desk,
    walls,
    met,
    fromWall,
    wall,
    own,
    shown,
    forgotten,
    invitation,
    end,
  };
}

/** Waits for what is to come in a moment. */
async function until(what: () => unknown): Promise<void> {
  await expect.poll(() => Boolean(what()), { timeout: 15_000, interval: 5 }).toBe(true);
}

const placesOn = (shown: readonly unknown[]) =>
  shown.filter((value) => Array.isArray(value) && value[1]?.kind === 'place');

describe('a wall', () => {
  it('is let in as one, is seen to be there, and shows what is led without a child or a group', async () => {
    const { desk, own, walls, met, wall, shown, classId, invitation, end } = await classWithWall();
    expect(invitation.isWall).toBe(true);
    await until(() => met.includes(own.id));
    await until(() => desk.shared.rights()?.members.get(own.id)?.role === 'wall');
    said(walls, led(classId, 0));
    await until(() => placesOn(shown).length > 0);
    expect(wall.drillId()).toBe('drill');
    const all = JSON.stringify(shown);
    expect(all).toContain(SMALL_DRILL.run[0]?.word);
    expect(all).not.toContain('Robin');
    expect(all).not.toContain('maple');
    end();
  });

  it('is told the plan again when it asks, as a stage does that was not listening yet', async () => {
    const { desk, own, walls, shown, classId, end } = await classWithWall();
    await until(() => desk.shared.rights()?.members.get(own.id)?.role === 'wall');
    const plans = () =>
      shown.filter((value) => Array.isArray(value) && value[1]?.kind === 'plan').length;
    said(walls, led(classId, 0));
    await until(() => plans() === 1);
    // The lead answers who asks with its plan and where it stands, as to any window.
    said(walls, led(classId, 0));
    await until(() => plans() === 2);
    end();
  });

  it('is sent no record, neither old nor new, and may append nothing', async () => {
    const { classId, owner, own, end } = await classWithWall();
    const event: LogEvent = {
      ...{ id: eventId(newId()), classId, at: Date.now(), by: owner.own.by, kind: 'set' },
      body: { of: 'child', id: childId('r'), field: 'name', value: 'Robin' },
    };
    const raw = await RawDevice.connect(port(), own);
    raw.follow(classId);
    expect(await raw.next('following')).toMatchObject({ head: 0, knows: true });
    await owner.record([event]);
    await owner.far.settled();
    for (const lane of ['run', 'private', 'rights'] as const) {
      const body = lane === 'rights' ? '{"says":"gone"}' : 'AAAA';
      const answer = await raw.append(classId, [await raw.record(classId, lane, 1, body)]);
      expect(answer).toMatchObject({ t: 'refused', why: 'not-allowed' });
    }
    await owner.far.sayLive(['a name', 'Robin']);
    // What is said to walls comes after what was said to the class, and the latter does not come.
    owner.far.sayTo('walls', 'BBBB');
    await raw.until(() => raw.heard.find(({ t }) => t === 'live'));
    expect(raw.records).toEqual([]);
    const live = raw.heard.filter((message) => message.t === 'live');
    expect(live.map((message) => message.t === 'live' && message.body)).toEqual(['BBBB']);
    raw.close();
    end();
  });

  it('asks the desk only to go on and back, whatever is pressed', async () => {
    const { classId, walls, wall, fromWall, shown, end } = await classWithWall();
    said(walls, led(classId, 0));
    await until(() => placesOn(shown).length > 0);
    const wish = { kind: 'wish', id: 'w', drillId: 'drill', from: 1 };
    const says = (value: object) => wall.say([WARM_UP, { ...wish, ...value }]);
    says({ deed: { does: 'call', child: 'Robin' } });
    says({ deed: { does: 'act', act: 'correct' } });
    says({ drillId: 'another', deed: { does: 'act', act: 'next' } });
    wall.say([WARM_UP, { kind: 'plan', plan: {} }]);
    says({ deed: { does: 'act', act: 'next' } });
    wall.say([WINDOWS, { kind: 'here', from: 'window', role: 'desk', drillId: 'drill' }]);
    wall.say([WINDOWS, { kind: 'here', from: 'window', role: 'stage', drillId: null }]);
    await until(() => fromWall.length >= 3);
    expect(fromWall).toEqual([
      [WARM_UP, { ...wish, deed: { does: 'act', act: 'next' } }],
      null,
      [WINDOWS, { kind: 'here', from: 'window', role: 'stage', drillId: 'drill' }],
    ]);
    end();
  });

  it('has no key any more when it has forgotten, and hears nothing', async () => {
    const { classId, walls, wall, shown, forgotten, end } = await classWithWall();
    said(walls, led(classId, 0));
    await until(() => placesOn(shown).length > 0);
    wall.forget();
    expect(wall.drillId()).toBeNull();
    expect(forgotten).toEqual(['here']);
    const before = shown.length;
    said(walls, led(classId, 1, Date.now() + 1));
    wall.say([WARM_UP, { kind: 'ask' }]);
    await new Promise((resolve) => setTimeout(resolve, 100));
    expect(shown.length).toBe(before);
    end();
  });

  it('is removed at once', async () => {
    const first = await classWithWall();
    await first.owner.far.say(await first.owner.shared.remove(first.own.id, first.owner.far.now()));
    await until(() => first.forgotten[0] === 'removed');
    first.end();
  });

  it('is given no key by an aide, whose group is not the class’s, nor of a warm-up of yesterday', async () => {
    const aide = await classWithWall('aide');
    await until(() => aide.met.includes(aide.own.id));
    said(aide.walls, led(aide.classId, 0));
    const old = await classWithWall();
    await until(() => old.met.includes(old.own.id));
    said(old.walls, led(old.classId, 0, Date.now() - WALL_FOR - 60_000));
    await new Promise((resolve) => setTimeout(resolve, 150));
    expect([aide.wall.drillId(), old.wall.drillId()]).toEqual([null, null]);
    said(old.walls, led(old.classId, 0));
    await until(() => old.wall.drillId() === 'drill');
    aide.end();
    old.end();
  });

  it('goes on when the keys change in the middle, as when a device is removed', async () => {
    const { classId, owner, walls, shown, wall, end } = await classWithWall();
    const tablet = await owner.letIn('aide');
    said(walls, led(classId, 0));
    await until(() => placesOn(shown).length === 1);
    await owner.far.say(await owner.shared.remove(tablet.own.id, owner.far.now()));
    said(walls, led(classId, 1, Date.now() + 1));
    await until(() => placesOn(shown).length === 2);
    expect(wall.drillId()).toBe('drill');
    tablet.close();
    end();
  });

  // The last one: the server's clock goes on, and its limits count by it.
  it('is out of the class after three hours, whoever removes it or not', async () => {
    const { own, classId, end } = await classWithWall();
    serverAhead = WALL_FOR;
    const raw = await RawDevice.connect(port(), own);
    raw.follow(classId);
    expect(await raw.next('closed')).toMatchObject({ why: 'removed' });
    raw.close();
    end();
  });
});
