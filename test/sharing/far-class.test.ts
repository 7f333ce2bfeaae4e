import { copyFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type ClassId, childId, eventId } from '../../core/ids.ts';
import type { LogEvent } from '../../core/log/event.ts';
import { mergeEvents } from '../../core/log/merge.ts';
import { replay } from '../../core/log/replay.ts';
import { backUp } from '../../server/backup.ts';
import { makePass } from '../../server/identity.ts';
import { type Served, serveClasses } from '../../server/serve.ts';
import { createMemoryStore } from '../../web/device/log/memory-store.ts';
import { classYear } from '../class-year.ts';
import { STORE_LAWS } from '../event-store-contract.ts';
import { postgresForTest, sqliteForTest } from './databases.ts';
import { FarDevice, newClass, newId } from './far-device.ts';
import { RawDevice } from './raw-device.ts';

const YEAR = 365 * 24 * 60 * 60 * 1000;

describe.each([
  ['SQLite', sqliteForTest()],
  ['PostgreSQL', postgresForTest()],
] as const)('devices in step through a server on %s', (_, given) => {
  if ('missing' in given) {
    it.skip(`cannot be tried here: ${given.missing}`, () => {});
    return;
  }
  let served: Served;
  let pass: string;
  let serverAhead = 0;
  const port = () => served.port;
  const start = async (onPort = 0) => {
    const { db, word } = given.open();
    const spec = { db, word, folder: null, host: '127.0.0.1', port: onPort, tls: null };
    const now = () => Date.now() + serverAhead;
    served = await serveClasses({
      ...spec,
      now,
      appendsPerSecond: 100_000,
      arrivalsPerSecond: 10_000,
    });
    return db;
  };
  beforeAll(async () => {
    pass = await makePass(await start(), 1000);
  });
  afterAll(async () => {
    await served.stop();
    given.remove();
  });

  const named = (classId: ClassId, value: string, by: string, at = Date.now()): LogEvent => ({
    id: eventId(newId()),
    classId,
    at,
    by,
    kind: 'set',
    body: { of: 'child', id: childId('r'), field: 'name', value },
  });
  const sorted = async (device: FarDevice) => mergeEvents(await device.events(), []);

  it('have the same, whoever wrote it, with what was there before one came in', async () => {
    const classId = newClass();
    const desk = await FarDevice.begin(port, classId, pass);
    await desk.record([named(classId, 'Robin', desk.own.by)]);
    const phone = await desk.letIn('teacher');
    await phone.record([named(classId, 'R. B.', phone.own.by)]);
    await desk.until(2);
    await phone.until(2);
    expect(await sorted(desk)).toEqual(await sorted(phone));
    await phone.far.settled();
    expect(phone.far.state()).toMatchObject({ where: 'everywhere', why: null, unsent: 0 });
    expect(phone.far.state().aside).toEqual(new Map());
    desk.close();
    phone.close();
  });

  it('are in step where no WebSocket gets through', async () => {
    const classId = newClass();
    const desk = await FarDevice.begin(port, classId, pass);
    const phone = await desk.letIn('teacher');
    phone.close();
    phone.polls = true;
    await phone.open();
    for (let n = 0; n < 5; n++) {
      await desk.record([named(classId, `desk ${n}`, desk.own.by)]);
      await phone.record([named(classId, `phone ${n}`, phone.own.by)]);
    }
    await phone.until(10);
    await desk.until(10);
    expect(await sorted(phone)).toEqual(await sorted(desk));
    const tablet = await desk.letIn('aide');
    await phone.far.settled();
    expect(await desk.far.say(await desk.shared.remove(phone.own.id, Date.now()))).toEqual({
      kept: true,
    });
    await expect.poll(() => phone.far.state()).toMatchObject({ where: 'closed', why: 'removed' });
    for (const device of [desk, phone, tablet]) device.close();
  });

  it('keep what is recorded while the server is away, and send it when it is back', async () => {
    const classId = newClass();
    const desk = await FarDevice.begin(port, classId, pass);
    const phone = await desk.letIn('teacher');
    const at = served.port;
    await served.stop();
    await phone.record([named(classId, 'offline', phone.own.by)]);
    expect(phone.far.state().where).toBe('here');
    phone.close();
    await start(at);
    await phone.open();
    await desk.until(1);
    expect((await desk.events()).map(({ body }) => body)).toMatchObject([{ value: 'offline' }]);
    desk.close();
    phone.close();
  });

  it('are brought up to date where the class is not open, and nobody takes the visit for a presence', async () => {
    const classId = newClass();
    const desk = await FarDevice.begin(port, classId, pass);
    const phone = await desk.letIn('teacher');
    const at = served.port;
    await served.stop();
    await phone.record([named(classId, 'offline', phone.own.by)]);
    phone.close();
    expect(await phone.visit()).toBe(false);
    await start(at);
    await desk.record([named(classId, 'meanwhile', desk.own.by)]);
    await desk.far.settled();
    const met: unknown[] = [];
    desk.hears = { onLive: (from) => met.push(from) };
    expect(await phone.visit()).toBe(true);
    await desk.until(2);
    expect(await sorted(phone)).toEqual(await sorted(desk));
    expect((await phone.ledger.read()).unsent).toEqual([]);
    expect(met).toEqual([]);
    await phone.open();
    await expect.poll(() => met).toContain(phone.own.id);
    desk.close();
    phone.close();
  });

  it('stamp nothing of anybody else again when one clock is wrong by a year', async () => {
    const classId = newClass();
    const desk = await FarDevice.begin(port, classId, pass);
    const phone = await desk.letIn('teacher');
    phone.close();
    phone.wrongBy = YEAR;
    await phone.open();
    await phone.record([named(classId, 'from next year', phone.own.by, Date.now() + YEAR)]);
    await desk.until(2);
    const state = replay(classId, await desk.events());
    expect(Math.abs(state.last - Date.now())).toBeLessThan(10 * 60_000);
    await desk.record([named(classId, 'later', desk.own.by, state.last + 1)]);
    await phone.until(3);
    for (const device of [desk, phone]) {
      const now = replay(classId, await device.events());
      expect(now.children.get(childId('r'))?.name).toBe('later');
    }
    desk.close();
    phone.close();
  });

  it('set aside what an aide may not say, and go on with the rest', async () => {
    const classId = newClass();
    const desk = await FarDevice.begin(port, classId, pass);
    const aide = await desk.letIn('aide');
    await aide.record([named(classId, 'not hers to say', aide.own.by)]);
    const moment = { drillId: 'd', part: 'visual', place: 0 };
    const stamp = { classId, at: Date.now(), by: aide.own.by };
    await aide.record([{ ...stamp, id: eventId(newId()), kind: 'shown', body: moment }]);
    await desk.until(1);
    expect((await desk.events()).map(({ kind }) => kind)).toEqual(['shown']);
    expect([...desk.far.state().aside.values()]).toEqual(['not-allowed']);
    const note = { drillId: null, groupId: 'g', text: 'x' };
    await aide.record([{ ...stamp, id: eventId(newId()), kind: 'noted', body: note }]);
    await aide.far.settled();
    expect(new Set(aide.far.state().aside.values())).toEqual(new Set(['not-allowed']));
    desk.close();
    aide.close();
  });

  it('can be opened with the key of a school, as all of them see, until it is taken back', async () => {
    const classId = newClass();
    const desk = await FarDevice.begin(port, classId, pass);
    await desk.record([named(classId, 'from the beginning', desk.own.by)]);
    const phone = await desk.letIn('teacher');
    // The keys change once before, so that the school reads back through the chain.
    await desk.far.say(await desk.shared.remove(phone.own.id, desk.far.now()));
    const aide = await desk.letIn('aide');
    const school = await desk.letInByKeys('school');
    const note = { drillId: null, groupId: 'g', text: 'in private' };
    const stamp = { classId, at: Date.now(), by: desk.own.by };
    await desk.record([{ ...stamp, id: eventId(newId()), kind: 'noted', body: note }]);
    await school.until(2);
    await aide.far.settled();
    const seen = [...(aide.shared.rights()?.members.values() ?? [])].map(({ role }) => role);
    expect(seen).toContain('school');
    await school.record([named(classId, 'not for a school to say', school.own.by)]);
    await school.far.settled();
    expect([...school.far.state().aside.values()]).toEqual(['not-allowed']);
    await desk.far.say(await desk.shared.remove(school.own.id, desk.far.now()));
    await expect.poll(() => school.far.state().where).toBe('closed');
    await desk.record([named(classId, 'afterwards', desk.own.by)]);
    await aide.until(2);
    expect(await school.events()).toHaveLength(3);
    for (const device of [desk, phone, aide, school]) device.close();
  });

  it('tell a device that was removed, which then sends and hears nothing more', async () => {
    const classId = newClass();
    const desk = await FarDevice.begin(port, classId, pass);
    const phone = await desk.letIn('teacher');
    const tablet = await desk.letIn('teacher');
    await desk.far.settled();
    expect(await desk.far.say(await desk.shared.remove(phone.own.id, Date.now()))).toEqual({
      kept: true,
    });
    await expect.poll(() => phone.far.state()).toMatchObject({ where: 'closed', why: 'removed' });
    await tablet.record([named(classId, 'under the new keys', tablet.own.by)]);
    await desk.until(1);
    expect(await phone.events()).toEqual([]);
    for (const device of [desk, phone, tablet]) device.close();
  });

  if (given.name === 'SQLite') {
    /** A class of three devices; what the third and ten names of each brought is lost with the server's copy. */
    const setBack = async (later = 0) => {
      const classId = newClass();
      const desk = await FarDevice.begin(port, classId, pass);
      const phone = await desk.letIn('teacher');
      const say = async (device: FarDevice, from: number) => {
        for (let n = from; n < from + 10; n++) {
          await device.record([named(classId, `name ${n}`, device.own.by)]);
          await device.far.settled();
        }
      };
      await say(desk, 0);
      const at = served.port;
      await served.stop();
      const copies = join(given.folder, `copies of ${classId}`);
      const { db } = given.open();
      const copy = await backUp(db, copies, '2026-11-30');
      await db.destroy();
      await start(at);
      const tablet = await desk.letIn('aide');
      await say(phone, 10);
      await say(desk, 20);
      await phone.until(30);
      await tablet.until(30);
      await served.stop();
      for (const end of ['', '-wal'])
        rmSync(join(given.folder, `sweepline.db${end}`), { force: true });
      copyFileSync(copy ?? '', join(given.folder, 'sweepline.db'));
      serverAhead += later;
      await start(at);
      return { classId, desk, phone, tablet };
    };
    const whole = Array.from({ length: 30 }, (_, n) => `name ${n}`);
    const valuesOf = async (device: FarDevice) =>
      (await sorted(device)).flatMap(({ body }) => (body as { value?: string }).value ?? []);

    it('give back to a server that was restored from a copy what it has lost', async () => {
      const { desk, phone, tablet } = await setBack();
      await expect.poll(() => desk.far.state().where, { timeout: 10_000 }).toBe('everywhere');
      const laptop = await desk.letIn('teacher');
      await laptop.until(30);
      expect(await valuesOf(laptop)).toEqual(whole);
      expect(laptop.shared.rights()?.members.has(tablet.own.id)).toBe(true);
      for (const device of [desk, phone, tablet, laptop]) device.close();
    });

    it('bring back who came in meanwhile, though the invitation has had its time', async () => {
      const { classId, desk, phone, tablet } = await setBack(60 * 60_000);
      const moment = { drillId: 'd', part: 'visual', place: 0 };
      const stamp = { id: eventId(newId()), classId, at: Date.now(), by: tablet.own.by };
      await tablet.record([{ ...stamp, kind: 'shown', body: moment }]);
      for (const device of [desk, phone, tablet]) await device.far.settled();
      await phone.until(31);
      expect(phone.shared.rights()?.members.get(tablet.own.id)?.role).toBe('aide');
      expect(tablet.far.state()).toMatchObject({ where: 'everywhere', aside: new Map() });
      expect(phone.far.state().aside).toEqual(new Map());
      for (const device of [desk, phone, tablet]) device.close();
    });

    it('share a class again on a server that has lost all of it, with a pass', async () => {
      const classId = newClass();
      const desk = await FarDevice.begin(port, classId, pass);
      const phone = await desk.letIn('teacher');
      await phone.record([named(classId, 'Robin', phone.own.by)]);
      await desk.until(1);
      const at = served.port;
      await served.stop();
      rmSync(given.folder, { recursive: true });
      pass = await makePass(await start(at), 1000);
      await expect.poll(() => desk.far.state().needsPass).toBe(true);
      await phone.record([named(classId, 'R. B.', phone.own.by)]);
      desk.far.shareAgain(pass);
      await desk.until(2);
      const laptop = await desk.letIn('teacher');
      await laptop.until(2);
      expect(await valuesOf(laptop)).toEqual(['Robin', 'R. B.']);
      expect(laptop.shared.rights()?.members.has(phone.own.id)).toBe(true);
      for (const device of [desk, phone, laptop]) device.close();
    });
  }

  it('read a year of a class on a new device, in few records', async () => {
    const classId = newClass();
    const desk = await FarDevice.begin(port, classId, pass);
    const events = classYear(classId, 5000).map((event) => ({ ...event, at: event.at - YEAR }));
    await desk.record(events);
    await desk.far.settled();
    const laptop = await desk.letIn('teacher');
    await laptop.until(5000);
    expect(await sorted(laptop)).toEqual(mergeEvents(events, []));
    desk.close();
    laptop.close();
  });

  it('have all of it after small records were put into large ones, whoever was away', async () => {
    const classId = newClass();
    const desk = await FarDevice.begin(port, classId, pass);
    const phone = await desk.letIn('teacher');
    const aide = await desk.letIn('aide');
    const events = classYear(classId, 240).map((event) => ({ ...event, at: event.at - YEAR }));
    for (const [n, event] of events.entries()) {
      if (n === 100) phone.close();
      await desk.record([event]);
      await desk.far.settled();
    }
    await aide.record([named(classId, 'not hers to say', aide.own.by)]);
    await aide.far.settled();
    await desk.far.settled();
    // The aide's record was set aside, and stays.
    expect(await desk.pack()).toBe(240);
    expect(await desk.pack()).toBe(0);
    const laptop = await desk.letIn('teacher');
    await laptop.until(240);
    await phone.open();
    await phone.until(240);
    for (const device of [laptop, phone]) {
      await device.far.settled();
      expect(await sorted(device)).toEqual(mergeEvents(events, []));
      expect([...device.far.state().aside.values()]).toEqual(['not-allowed']);
    }
    const raw = await RawDevice.connect(served.port, laptop.own);
    raw.follow(classId);
    const { head } = await raw.next('following');
    await raw.until(() => raw.place === head);
    expect([head > 240, raw.records.length < 15]).toEqual([true, true]);
    raw.close();
    await desk.record([named(classId, 'goes on', desk.own.by)]);
    await phone.until(241);
    for (const device of [desk, phone, aide, laptop]) device.close();
  });

  it('erase a child everywhere: on who was away and at the server; and none of it comes back', async () => {
    const classId = newClass();
    const desk = await FarDevice.begin(port, classId, pass);
    const phone = await desk.letIn('teacher');
    const tablet = await desk.letIn('aide');
    const ofChild = (id: string, value: string, by: string): LogEvent => ({
      ...named(classId, value, by),
      body: { of: 'child', id: childId(id), field: 'name', value },
    });
    const [robin, sam] = [ofChild('r', 'Robin', desk.own.by), ofChild('s', 'Sam', desk.own.by)];
    // One record holds both; only what is of the one child goes.
    await desk.record([robin, sam]);
    for (const device of [phone, tablet]) await device.until(2);
    await phone.far.settled();
    phone.close();
    const late = ofChild('r', 'R. B.', phone.own.by);
    await phone.store.append([late]);
    await phone.ledger.noteUnsent([late]);
    const heldBy = async () => {
      const raw = await RawDevice.connect(served.port, desk.own);
      raw.follow(classId);
      const { head } = await raw.next('following');
      await raw.until(() => raw.place === head);
      raw.close();
      return raw.records.filter(({ lane }) => lane === 'run').map(({ id }) => id);
    };
    const before = await heldBy();
    expect(await desk.far.say([await desk.shared.purge(['r'])])).toEqual({ kept: true });
    expect(await sorted(desk)).toEqual([sam]);
    await expect.poll(() => sorted(tablet)).toEqual([sam]);
    expect(desk.toldErased).toBe(1);
    expect(await desk.pack()).toBe(1);
    const after = await heldBy();
    expect(after.filter((id) => before.includes(id))).toEqual([]);
    expect(after).toHaveLength(1);
    // The phone comes back with the old name, and has written another meanwhile.
    await phone.open();
    await phone.far.settled();
    await expect.poll(() => sorted(phone)).toEqual([sam]);
    expect(phone.far.state()).toMatchObject({ unsent: 0, aside: new Map() });
    await desk.pack();
    expect(await desk.pack()).toBe(0);
    const laptop = await desk.letIn('teacher');
    await laptop.until(1);
    // An old file, on any of them.
    for (const device of [desk, phone, tablet, laptop]) {
      await device.store.append([robin, late]);
      expect(await sorted(device)).toEqual([sam]);
      device.close();
    }
  });

  it.each(STORE_LAWS.map(({ name, check }) => [name, check] as const))(
    'are together a store of events: %s',
    async (_name, check) => {
      const store = pairStore(port, pass);
      await check(store);
      await store.close();
    },
  );
});

/**
 * Two devices as one store: what is appended on one is read on the other. Ids of classes are given others
 * on the way, since a server takes fewer signs than a store does.
 */
function pairStore(port: () => number, pass: string) {
  const local = createMemoryStore();
  const pairs = new Map<string, Promise<readonly [FarDevice, FarDevice]>>();
  const sharedIds = new Map<ClassId, ClassId>();
  const pairOf = (classId: ClassId) => {
    const known = pairs.get(classId);
    if (known) return known;
    const id = newClass();
    sharedIds.set(classId, id);
    const made = FarDevice.begin(port, id, pass).then(
      async (one) => [one, await one.letIn('owner')] as const,
    );
    pairs.set(classId, made);
    return made;
  };
  const store: ReturnType<typeof createMemoryStore> = {
    async append(events) {
      const outcome = await local.append(events);
      if ('error' in outcome) return outcome;
      for (const classId of new Set(events.map((event) => event.classId))) {
        const [one] = await pairOf(classId);
        const own = events.filter((event) => event.classId === classId);
        const held = new Set((await one.events()).map(({ id }) => id));
        const shared = sharedIds.get(classId) as ClassId;
        const fresh = own.filter(({ id }) => !held.has(id));
        await one.record(fresh.map((event) => ({ ...event, classId: shared })));
      }
      return outcome;
    },
    async eventsOf(classId) {
      if (!pairs.has(classId)) return { events: [] };
      const [one, other] = await pairOf(classId);
      await one.far.settled();
      const count = (await one.events()).length;
      await other.until(count);
      return { events: (await other.events()).map((event) => ({ ...event, classId })) };
    },
    async classes() {
      const listed = await local.classes();
      if (!('classes' in listed)) return listed;
      const classes = [];
      for (const { classId, events } of listed.classes) {
        const read = await store.eventsOf(classId);
        const ids = new Set(events.map(({ id }) => id));
        const kept = 'events' in read ? read.events.filter(({ id }) => ids.has(id)) : [];
        classes.push({ classId, events: kept });
      }
      return { ...listed, classes };
    },
    async forget(classId) {
      const [one, other] = await pairOf(classId);
      await one.far.say([await one.shared.deleted()]);
      await other.far.settled();
      pairs.delete(classId);
      for (const device of [one, other]) device.close();
      return local.forget(classId);
    },
    async remove(classId, ids) {
      const [one, other] = await pairOf(classId);
      await one.far.settled();
      await one.far.say([await one.shared.purge(ids)]);
      await expect.poll(() => other.shared.rights()?.erased.size).toBe(ids.length);
      await expect
        .poll(async () => (await other.events()).length)
        .toBe((await one.events()).length);
      return local.remove(classId, ids);
    },
    recall: (classId) => local.recall(classId),
    async close() {
      for (const pair of pairs.values()) for (const device of await pair) device.close();
    },
  };
  return store;
}
