import { randomBytes } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { sql } from 'kysely';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type ClassId, childId, classId, eventId, groupId } from '../core/ids.ts';
import { makeMessage } from '../core/sharing/message.ts';
import type { ClassRecord, KeptRecord } from '../core/sharing/record.ts';
import type { Role } from '../core/sharing/role.ts';
import { postgresForTest, sqliteForTest, type TestDatabase } from '../test/sharing/databases.ts';
import { RawDevice } from '../test/sharing/raw-device.ts';
import { signText } from '../web/device/far/cipher.ts';
import { openInvitation } from '../web/device/far/invitation.ts';
import { createSharedClass, type SharedClass } from '../web/device/far/shared-class.ts';
import { makePass } from './identity.ts';
import { type Served, serveClasses } from './serve.ts';

let lastId = 0;
const newId = () => `id-${process.pid}-${lastId++}`;
const newClass = () => classId(newId());
const postgres = postgresForTest();

describe.each([
  ['SQLite', sqliteForTest()],
  ['PostgreSQL', postgres],
] as const)('a server on %s', (name, given) => {
  if ('missing' in given) {
    it.skip(`cannot be tried here: ${given.missing}`, () => {});
    return;
  }
  const database: TestDatabase = given;
  let served: Served;
  let pass: string;
  let now = Date.UTC(2026, 10, 30);

  const start = async () => {
    const { db, word } = database.open();
    const spec = { db, word, folder: null, host: '127.0.0.1', port: 0, tls: null };
    served = await serveClasses({
      ...spec,
      now: () => now,
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
    database.remove();
  });

  /** A class of its own with its owner, shared and followed. */
  async function begin(classId = newClass()) {
    const device = await RawDevice.connect(served.port, undefined, newId());
    const { own } = device;
    const shared = createSharedClass({ classId, own, founder: own.id, invitation: null, newId });
    expect(await device.append(classId, [await shared.found()], pass)).toMatchObject({ seqs: [1] });
    device.follow(classId);
    const owner = { device, shared, classId };
    await readAll(owner, 1);
    return owner;
  }

  type Party = {
    readonly device: RawDevice;
    readonly shared: SharedClass;
    readonly classId: ClassId;
  };

  /** Reads until a device has so many records. */
  async function readAll({ device, shared }: Party, count: number): Promise<void> {
    await device.until(() => device.records.length >= count);
    for (const record of device.records.slice(0, count)) {
      if (record.seq > (taken.get(shared) ?? 0)) {
        await shared.take(record, () => undefined);
        taken.set(shared, record.seq);
      }
    }
  }
  const taken = new Map<SharedClass, number>();

  async function letIn(owner: Party, role: Role): Promise<Party> {
    const { classId } = owner;
    const { record, id, box, secret } = await owner.shared.invite(role, now + 600_000);
    await owner.device.append(classId, [record]);
    expect(await owner.device.deposit(classId, id, box)).toMatchObject({ t: 'deposited' });
    const device = await RawDevice.connect(served.port, undefined, newId());
    const opened = await openInvitation(secret, (await device.fetch(id)) ?? '');
    if (!opened) throw new Error('The invitation does not open.');
    const { founder } = opened;
    const shared = createSharedClass({
      classId,
      own: device.own,
      founder,
      invitation: opened,
      newId,
    });
    const answer = await device.append(classId, [await shared.comeIn(opened)]);
    if (answer.t !== 'kept') throw new Error(`Not let in: ${JSON.stringify(answer)}`);
    device.follow(classId);
    const party = { device, shared, classId };
    await readAll(party, answer.seqs[0] as number);
    return party;
  }

  async function said({ shared, classId }: Party, value: string, lane: 'run' | 'private' = 'run') {
    const stamp = { id: eventId(newId()), classId, at: now, by: 'desk' };
    const event =
      lane === 'run'
        ? { ...stamp, kind: 'set', body: { of: 'child', id: childId('c'), field: 'name', value } }
        : { ...stamp, kind: 'noted', body: { drillId: null, groupId: groupId('g'), text: value } };
    return (await shared.sealed(lane, newId(), 1, [event])) as ClassRecord;
  }

  const end = (...parties: readonly Party[]) => {
    for (const { device } of parties) device.close();
  };

  it('keeps, answers after that, and sends on to who follows', async () => {
    const owner = await begin();
    const phone = await letIn(owner, 'teacher');
    const record = await said(phone, 'Robin');
    expect(await phone.device.append(owner.classId, [record])).toMatchObject({ seqs: [4] });
    await owner.device.until(() => owner.device.records.length >= 4);
    expect(owner.device.records.map(({ seq }) => seq)).toEqual([1, 2, 3, 4]);
    expect(owner.device.records.at(-1)).toMatchObject(record);
    end(owner, phone);
  });

  it('sends nothing on from a place that it does not know, however far it has come', async () => {
    const owner = await begin();
    const { classId, device } = owner;
    await device.append(classId, [await said(owner, 'one'), await said(owner, 'two')]);
    await device.until(() => device.records.length >= 3);
    const other = [...device.records.slice(0, 2), { ...device.records[2], id: 'lost' }];
    const early = await RawDevice.connect(served.port, device.own);
    for (const known of [other, [...device.records, ...device.records]]) {
      early.follow(classId, known as typeof device.records);
      expect(await early.next('following')).toMatchObject({ head: 3, knows: false });
    }
    const kept = await device.append(classId, [await said(owner, 'three')]);
    expect(kept).toMatchObject({ seqs: [4] });
    early.follow(classId, device.records.slice(0, 2));
    await early.until(() => early.records.length >= 2);
    expect(early.records.map(({ seq }) => seq)).toEqual([3, 4]);
    early.close();
    end(owner);
  });

  it('takes a record once, however often it comes', async () => {
    const owner = await begin();
    const [one, two] = [await said(owner, 'one'), await said(owner, 'two')];
    const { classId, device } = owner;
    expect(await device.append(classId, [one])).toMatchObject({ seqs: [2] });
    expect(await device.append(classId, [one, two, one])).toMatchObject({ seqs: [2, 3, 2] });
    await device.until(() => device.records.length >= 3);
    expect(device.records).toHaveLength(3);
    end(owner);
  });

  it('keeps all of an append or none', async () => {
    const owner = await begin();
    const { classId, device } = owner;
    const good = await said(owner, 'good');
    const bad = { ...(await said(owner, 'bad')), signature: 'A'.repeat(86) };
    expect(await device.append(classId, [good, bad])).toEqual({
      t: 'refused',
      k: expect.any(Number),
      id: bad.id,
      why: 'wrong-signature',
    });
    expect(await device.append(classId, [good])).toMatchObject({ seqs: [2] });
    end(owner);
  });

  it('gives every follower every record in order and without a gap, while many write at once', async () => {
    const owners = await Promise.all(Array.from({ length: 4 }, () => begin()));
    const parties = await Promise.all(
      owners.map(async (owner) => [owner, await letIn(owner, 'teacher')] as const),
    );
    const each = 12;
    await Promise.all(
      parties.flat().map(async (party) => {
        for (let n = 0; n < each; n++) {
          const records = [await said(party, `${n}`), await said(party, `${n} again`)];
          expect(await party.device.append(party.classId, records)).toMatchObject({ t: 'kept' });
        }
      }),
    );
    for (const { device } of parties.flat()) {
      const all = 3 + 2 * 2 * each;
      await device.until(() => device.records.length >= all);
      expect(device.records.map(({ seq }) => seq)).toEqual(
        Array.from({ length: all }, (_, n) => n + 1),
      );
    }
    end(...parties.flat());
  });

  it.each([
    ['teacher', 'kept', 'kept'],
    ['aide', 'kept', 'refused'],
    ['specialist', 'refused', 'refused'],
  ] as const)('holds a %s to the rights of one', async (role, run, inPrivate) => {
    const owner = await begin();
    const other = await letIn(owner, role);
    const { device, classId, shared } = other;
    expect((await device.append(classId, [await said(other, 'x')])).t).toBe(run);
    const forged = (await said(owner, 'x', 'private')) as ClassRecord;
    const own = (await shared.sealed('private', newId(), 1, [])) ?? {
      ...forged,
      writer: device.own.id,
    };
    expect((await device.append(classId, [own])).t).toBe(inPrivate);
    const { record } = await shared.invite('owner', now + 1000).catch(() => ({ record: forged }));
    expect((await device.append(classId, [{ ...record, id: newId() }])).t).toBe('refused');
    end(owner, other);
  });

  it('cuts off who was removed at once, and takes nothing more from there', async () => {
    const owner = await begin();
    const thief = await letIn(owner, 'teacher');
    const before = await said(thief, 'before');
    await readAll(owner, 3);
    await owner.device.append(owner.classId, await owner.shared.remove(thief.device.own.id, now));
    expect(await thief.device.untilEnded()).toMatch(/^1008/);
    const again = await RawDevice.connect(served.port, thief.device.own);
    expect(await again.append(owner.classId, [before])).toMatchObject({ why: 'removed' });
    again.follow(owner.classId);
    expect(await again.next('closed')).toMatchObject({ why: 'removed' });
    expect(again.records).toEqual([]);
    again.close();
    end(owner);
  });

  it('reads no class to who is not in it, and asks who one is', async () => {
    const owner = await begin();
    const stranger = await RawDevice.connect(served.port);
    stranger.follow(owner.classId);
    expect(await stranger.next('closed')).toMatchObject({ why: 'no-member' });
    stranger.follow(classId('never-heard-of'));
    expect(await stranger.next('closed')).toMatchObject({ why: 'no-class' });
    expect(await stranger.append(owner.classId, [await said(owner, 'x')])).toMatchObject({
      t: 'kept',
    });
    expect(await stranger.deposit(owner.classId, 'i', 'AAAA')).toMatchObject({ t: 'refused' });
    const impostor = await RawDevice.open(served.port, stranger.own);
    await impostor.next('challenge');
    impostor.follow(owner.classId);
    expect(await impostor.untilEnded()).toMatch(/^1008/);
    const replayed = await RawDevice.open(served.port, stranger.own);
    await replayed.next('challenge');
    await replayed.prove('1.2.3');
    expect(await replayed.untilEnded()).toMatch(/^1008/);
    stranger.close();
    end(owner);
  });

  it('lets an invitation be used once, and not when it is too late', async () => {
    const owner = await begin();
    const { record, id, box } = await owner.shared.invite('aide', now + 1000);
    await owner.device.append(owner.classId, [record]);
    await owner.device.deposit(owner.classId, id, box);
    expect(await owner.device.fetch(id)).toBe(box);
    now += 1000;
    expect(await owner.device.fetch(id)).toBeNull();
    const phone = await letIn(owner, 'aide');
    const invite = phone.device.records.findLast(({ body }) => body.includes('"invite"'));
    expect(await owner.device.fetch(JSON.parse(invite?.body ?? '').invite)).toBeNull();
    end(owner, phone);
  });

  it('begins no class without a pass, and no more than the pass is for', async () => {
    const device = await RawDevice.connect(served.port);
    const { own } = device;
    const { db } = database.name === 'PostgreSQL' ? database.open() : { db: null };
    const shared = (classId: ClassId) =>
      createSharedClass({ classId, own, founder: own.id, invitation: null, newId });
    const found = async (classId: ClassId) => [await shared(classId).found()];
    expect(await device.append(classId('a'), await found(classId('a')))).toMatchObject({
      why: 'pass',
    });
    expect(await device.append(classId('a'), await found(classId('a')), 'GUESS')).toMatchObject({
      why: 'pass',
    });
    if (db) {
      const small = await makePass(db, 1);
      const typed = small.toLowerCase().replaceAll('-', ' ');
      expect(await device.append(classId('one'), await found(classId('one')), typed)).toMatchObject(
        { t: 'kept' },
      );
      expect(await device.append(classId('two'), await found(classId('two')), small)).toMatchObject(
        { why: 'pass' },
      );
      await db.destroy();
    }
    device.close();
  });

  it('deletes a class everywhere, and nobody brings it back', async () => {
    const owner = await begin();
    const phone = await letIn(owner, 'teacher');
    const { classId, device } = owner;
    const record = await said(phone, 'Robin');
    const moss = await said(owner, 'Moss');
    await device.append(classId, [moss]);
    await device.append(classId, [await owner.shared.deleted()]);
    expect(await phone.device.append(classId, [record])).toMatchObject({ why: 'gone' });
    const late = await RawDevice.connect(served.port, phone.device.own);
    for (const known of [[], phone.device.records.slice(0, 2)]) {
      late.follow(classId, known);
      expect(await late.next('following')).toMatchObject({ head: 5, knows: true });
    }
    await late.until(() => late.records.length >= 6);
    expect(late.records.map(({ lane }) => lane)).toEqual(Array(6).fill('rights'));
    if (name === 'SQLite') {
      const files = ['sweepline.db', 'sweepline.db-wal'].map((file) => join(database.folder, file));
      const all = files
        .map((file) => (existsSync(file) ? readFileSync(file, 'latin1') : ''))
        .join();
      expect(all).toContain(classId);
      for (const { id, body } of [record, moss]) {
        expect([all.includes(id), all.includes(body)]).toEqual([false, false]);
      }
    }
    expect(await late.append(classId, [await owner.shared.found()], pass)).toMatchObject({
      why: 'gone',
    });
    late.close();
    end(owner, phone);
  });

  it('answers whatever it does not understand by ending that connection, and goes on', async () => {
    const owner = await begin();
    const good = makeMessage({
      t: 'append',
      k: 9,
      c: owner.classId,
      records: [await said(owner, 'x')],
    });
    const rounds = Number(process.env.DAMAGED ?? 300);
    const damage = fc.sample(fc.tuple(fc.nat(), fc.nat(9), fc.string({ maxLength: 3 })), rounds);
    let device = await RawDevice.connect(served.port, owner.device.own);
    for (const [place, length, instead] of damage) {
      const at = place % good.length;
      if (device.ended !== null) device = await RawDevice.connect(served.port, owner.device.own);
      device.sendText(good.slice(0, at) + instead + good.slice(at + length));
      if (place % 4 === 0) await new Promise((resolve) => setTimeout(resolve));
    }
    device.close();
    expect(await owner.device.append(owner.classId, [await said(owner, 'y')])).toMatchObject({
      t: 'kept',
    });
    await owner.device.until(() => owner.device.records.length >= 2);
    const seqs = owner.device.records.map(({ seq }) => seq);
    expect(seqs).toEqual(seqs.map((_, n) => n + 1));
    end(owner);
  });

  it('lets a device that takes nothing hold nothing up', async () => {
    const owner = await begin();
    const stuck = await letIn(owner, 'teacher');
    stuck.device.stop();
    for (let n = 0; n < 30; n++) {
      const records = await Promise.all(
        Array.from({ length: 20 }, () => said(owner, 'word '.repeat(200))),
      );
      expect(await owner.device.append(owner.classId, records)).toMatchObject({ t: 'kept' });
    }
    await owner.device.until(() => owner.device.records.length >= 603);
    expect(stuck.device.records.length).toBeLessThan(603);
    end(owner, stuck);
  });

  it('has nothing of a class in its database or its log that anyone could read', async () => {
    const owner = await begin();
    const phone = await letIn(owner, 'teacher');
    const names = ['Quillon', 'Zebedee', 'ploverish'];
    for (const name of names) {
      await owner.device.append(owner.classId, [
        await said(owner, name),
        await said(owner, name, 'private'),
      ]);
    }
    end(owner, phone);
    const files = readdirSync(database.folder, { recursive: true, withFileTypes: true });
    const read = files
      .filter((file) => file.isFile())
      .map((file) => readFileSync(join(file.parentPath, file.name), 'latin1'));
    const all = read.join('\n');
    expect(all).toContain(owner.classId);
    for (const name of names) {
      for (const text of [name, Buffer.from(name).toString('base64').slice(0, 8)]) {
        expect(all).not.toContain(text);
      }
    }
  });

  it('says the same by plain requests, where no WebSocket gets through', async () => {
    const owner = await begin();
    const { classId, device } = owner;
    const base = `http://127.0.0.1:${served.port}/v1`;
    const { nonce } = await (await fetch(`${base}/challenge`)).json();
    const { id, sign: key, keys } = device.own;
    const signature = await signText(keys.sign.privateKey, `sweepline/1 proof ${nonce}`);
    const proof = makeMessage({ t: 'proof', device: id, key, nonce, signature });
    const ask = (path: string, body?: string, by = proof) =>
      fetch(`${base}/${path}`, {
        headers: { 'Sweepline-Proof': by },
        ...(body === undefined ? {} : { method: 'POST', body }),
      });
    const hear = async () => (await ask('hear')).json();
    expect(await hear()).toEqual([{ t: 'welcome' }]);
    const records = [await said(owner, 'Robin')];
    await ask('send', makeMessage({ t: 'append', k: 7, c: classId, records }));
    expect(await hear()).toEqual([{ t: 'kept', k: 7, seqs: [2] }]);
    await ask('send', makeMessage({ t: 'follow', c: classId, after: 0, trace: 0 }));
    expect(await hear()).toMatchObject([
      { t: 'following', head: 2, knows: true },
      { t: 'records', from: 0, to: 2 },
    ]);
    const waiting = hear();
    await device.append(classId, [await said(owner, 'Moss')]);
    expect(await waiting).toMatchObject([{ t: 'records', from: 2, to: 3 }]);
    const damaged = proof.replace(signature, 'A'.repeat(86));
    expect((await ask('hear', undefined, damaged)).status).toBe(401);
    expect((await ask('send', 'no message')).status).toBe(400);
    const other = await begin();
    await ask('send', makeMessage({ t: 'follow', c: other.classId, after: 0, trace: 0 }));
    expect(await hear()).toMatchObject([{ t: 'closed', why: 'no-member' }]);
    now += 16_000;
    const fetched = makeMessage({ t: 'fetch', k: 8, invite: 'none' });
    await expect.poll(async () => (await ask('send', fetched)).status, { timeout: 9000 }).toBe(410);
    end(owner, other);
  });

  it('sends an aide nothing that is private, and the aide’s line goes on without a gap', async () => {
    const owner = await begin();
    const [aide, specialist] = [await letIn(owner, 'aide'), await letIn(owner, 'specialist')];
    const { classId, device } = owner;
    await device.append(classId, [await said(owner, 'for her alone', 'private')]);
    await device.append(classId, [await said(owner, 'for all')]);
    await device.append(classId, [await said(owner, 'the last word', 'private')]);
    const lanesOf = ({ records }: RawDevice) => records.map(({ lane }) => lane).join(' ');
    await specialist.device.until(() => specialist.device.records.length >= 8);
    const rights = 'rights rights rights rights rights';
    expect(lanesOf(specialist.device)).toBe(`${rights} private run private`);
    await aide.device.until(() => aide.device.records.length >= 6);
    await aide.device.append(classId, [await said(aide, 'hers')]);
    await aide.device.until(() => aide.device.records.length >= 7);
    expect(lanesOf(aide.device)).toBe(`${rights} run run`);
    const late = await RawDevice.connect(served.port, aide.device.own);
    late.follow(classId);
    await late.until(() => late.records.length >= 7);
    expect(lanesOf(late)).toBe(`${rights} run run`);
    late.close();
    end(owner, aide, specialist);
  });

  it('passes on what is said live to who follows the class, and keeps nothing of it', async () => {
    const owner = await begin();
    const [phone, aside] = [await letIn(owner, 'specialist'), await begin()];
    const { classId, device } = owner;
    phone.device.send({ t: 'here', c: classId, body: 'cGhvbmU' });
    const from = phone.device.own.id;
    expect(await device.next('here')).toEqual({ t: 'here', c: classId, body: 'cGhvbmU', from });
    device.send({ t: 'live', c: classId, s: 'drill', n: 3, body: 'c3RlcA' });
    expect(await phone.device.next('live')).toMatchObject({ s: 'drill', n: 3, body: 'c3RlcA' });
    // Who is not in the class says nothing there and hears nothing.
    aside.device.send({ t: 'live', c: classId, s: 'drill', n: 9, body: 'AAAA' });
    device.send({ t: 'live', c: classId, s: 'drill', n: 4, body: 'AAAA' });
    expect(await phone.device.next('live')).toMatchObject({ n: 4 });
    expect(aside.device.heard.some(({ t }) => t === 'live' || t === 'here')).toBe(false);
    const late = await RawDevice.connect(served.port, device.own);
    late.follow(classId);
    await late.until(() => late.records.length >= 3);
    expect(late.heard.some(({ t }) => t === 'live')).toBe(false);
    phone.device.close();
    expect(await device.next('left')).toEqual({ t: 'left', c: classId, from });
    late.close();
    end(owner, aside);
  });

  it('tells of a device that is silent, and drops what one says too often', async () => {
    const owner = await begin();
    const phone = await letIn(owner, 'aide');
    const { classId, device } = owner;
    phone.device.send({ t: 'here', c: classId, body: 'AAAA' });
    await device.next('here');
    now += 26_000;
    expect(await device.next('left')).toMatchObject({ from: phone.device.own.id });
    for (let n = 0; n < 500; n++) {
      phone.device.send({ t: 'live', c: classId, s: 'drill', n, body: 'AAAA' });
    }
    now += 1000;
    await phone.device.append(classId, [await said(phone, 'after all of it')]);
    await device.until(() => device.records.length >= 4);
    const passed = device.heard.filter(({ t }) => t === 'live').length;
    expect(passed).toBeGreaterThan(0);
    expect(passed).toBeLessThan(100);
    end(owner, phone);
  });

  it('answers whether it is well, and carries the headers of the app', async () => {
    const answer = await fetch(`http://127.0.0.1:${served.port}/healthz`);
    expect([answer.status, await answer.text()]).toEqual([200, 'ok\n']);
    expect(answer.headers.get('content-security-policy')).toContain("default-src 'none'");
    expect(answer.headers.get('x-content-type-options')).toBe('nosniff');
    expect((await fetch(`http://127.0.0.1:${served.port}/v1/other`)).status).toBe(404);
  });

  it('keeps all of it when it is started again', async () => {
    const owner = await begin();
    const { classId } = owner;
    await owner.device.append(classId, [await said(owner, 'x')]);
    end(owner);
    await served.stop();
    await start();
    const again = await RawDevice.connect(served.port, owner.device.own);
    again.follow(classId, owner.device.records);
    expect(await again.next('following')).toMatchObject({ head: 2, knows: true });
    again.follow(classId);
    await again.until(() => again.records.length >= 2);
    again.close();
  });

  if (name === 'PostgreSQL') {
    it('sends on what another instance kept', async () => {
      const { db, word } = database.open();
      const spec = { db, word, folder: null, host: '127.0.0.1', port: 0, tls: null };
      const other = await serveClasses({
        ...spec,
        now: () => now,
        appendsPerSecond: 1000,
        arrivalsPerSecond: 1000,
      });
      const owner = await begin();
      const elsewhere = await RawDevice.connect(other.port, owner.device.own);
      elsewhere.follow(owner.classId);
      await owner.device.append(owner.classId, [await said(owner, 'x')]);
      await elsewhere.until(() => elsewhere.records.length >= 2);
      expect(await elsewhere.append(owner.classId, [await said(owner, 'y')])).toMatchObject({
        seqs: [3],
      });
      await owner.device.until(() => owner.device.records.length >= 3);
      const { classId } = owner;
      elsewhere.send({ t: 'here', c: classId, body: 'AAAA' });
      expect(await owner.device.next('here')).toMatchObject({ from: owner.device.own.id });
      const act = { t: 'live', c: classId, s: 'drill', n: 1, body: 'A'.repeat(5400) } as const;
      owner.device.send(act);
      expect(await elsewhere.next('live')).toMatchObject(act);
      await elsewhere.append(classId, [await said(owner, 'z')]);
      expect(elsewhere.heard.filter(({ t }) => t === 'live' || t === 'here')).toEqual([]);
      elsewhere.close();
      end(owner);
      await other.stop();
    });
  }
});

describe('a server that is asked too much', () => {
  const database = sqliteForTest();
  afterAll(() => database.remove());

  it('lets in from one address no more than it says, and none of that from others', async () => {
    const { db, word } = database.open();
    const spec = { db, word, folder: null, host: '127.0.0.1', port: 0, tls: null };
    const now = () => 1e12;
    const served = await serveClasses({ ...spec, now, appendsPerSecond: 1, arrivalsPerSecond: 1 });
    const ask = async (from: string) =>
      (
        await fetch(`http://127.0.0.1:${served.port}/v1/challenge`, {
          headers: { 'X-Forwarded-For': from },
        })
      ).status;
    const asked = [];
    for (let n = 0; n < 25; n++) asked.push(await ask('198.51.100.7'));
    expect(asked).toEqual([...Array(20).fill(200), ...Array(5).fill(429)]);
    expect(await ask('198.51.100.8')).toBe(200);
    await served.stop();
  });

  it('says that it is full and keeps what it had, and takes more when there is room', async () => {
    const { db, word } = database.open();
    const spec = { db, word, folder: null, host: '127.0.0.1', port: 0, tls: null };
    const some = { appendsPerSecond: 1000, arrivalsPerSecond: 1000 };
    const served = await serveClasses({ ...spec, now: Date.now, ...some });
    const pass = await makePass(db, 1);
    const device = await RawDevice.connect(served.port);
    const { own } = device;
    const shared = createSharedClass({
      classId: classId('c'),
      own,
      founder: own.id,
      invitation: null,
      newId,
    });
    expect(await device.append(classId('c'), [await shared.found()], pass)).toMatchObject({
      t: 'kept',
    });
    device.follow(classId('c'));
    await device.until(() => device.records.length > 0);
    await shared.take(device.records[0] as KeptRecord, () => undefined);
    const note = { drillId: null, groupId: 'g', text: randomBytes(30_000).toString('base64') };
    const event = {
      id: eventId('e'),
      classId: classId('c'),
      at: 1,
      by: own.by,
      kind: 'noted',
      body: note,
    };
    const large = (await shared.sealed('private', newId(), 1, [event])) as ClassRecord;
    const { page_count: pages } = (await sql<{ page_count: number }>`pragma page_count`.execute(db))
      .rows[0] as { page_count: number };
    await sql`pragma max_page_count = ${sql.lit(pages)}`.execute(db);
    expect(await device.append(classId('c'), [large])).toMatchObject({
      t: 'refused',
      id: null,
      why: 'full',
    });
    await sql`pragma max_page_count = ${sql.lit(pages * 100)}`.execute(db);
    expect(await device.append(classId('c'), [large])).toMatchObject({ t: 'kept', seqs: [2] });
    device.close();
    await served.stop();
  });
});
