import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { classId, eventId } from '../../core/ids.ts';
import { makeMessage, parseServerMessage, type ServerMessage } from '../../core/sharing/message.ts';
import type { ClassRecord, KeptRecord } from '../../core/sharing/record.ts';
import { createAppendQueue } from '../../server/append-queue.ts';
import { createClassStore } from '../../server/class-store.ts';
import { converse, type House } from '../../server/conversation.ts';
import { migrate } from '../../server/database/migrations.ts';
import { createFollowers, type Line } from '../../server/followers.ts';
import { makePass, readIdentity } from '../../server/identity.ts';
import { createLimit } from '../../server/limits.ts';
import { createPresence } from '../../server/presence.ts';
import { readMessage } from '../../server/session.ts';
import { makeKeys } from '../../web/device/far/cipher.ts';
import { ownDevice } from '../../web/device/far/own-device.ts';
import { createSharedClass, type Taken } from '../../web/device/far/shared-class.ts';
import { sqliteForTest } from './databases.ts';

/** How many damaged messages each side is given; `DAMAGED=100000` for a long run. */
const DAMAGED = Number(process.env.DAMAGED ?? 1500);

/** After so many damaged ones comes a good one. */
const EVERY = 25;

/** Always the same damage. */
const SEED = 19;

const values = fc.constantFrom<unknown>(
  ...[null, -1, 0, 1e308, 0.5, '', 'x', '\u0000', 'A'.repeat(90_000), [], {}, [[]], true],
  ...[Number.MAX_SAFE_INTEGER, '__proto__', { toString: 1 }, '-'.repeat(86), 'rights', 'gone'],
);

/** What happens to a message on its way: signs lost or put in, a value changed for another, a part said twice. */
const damage = fc.oneof(
  fc.record({ at: fc.nat(), length: fc.nat(9), instead: fc.string({ maxLength: 3 }) }),
  fc.record({ at: fc.nat(), value: values }),
  fc.record({ at: fc.nat(), twice: fc.nat(200) }),
);

function damaged(
  text: string,
  how:
    | { readonly at: number; readonly length: number; readonly instead: string }
    | { readonly at: number; readonly value: unknown }
    | { readonly at: number; readonly twice: number },
): string {
  const at = how.at % text.length;
  if ('instead' in how) return text.slice(0, at) + how.instead + text.slice(at + how.length);
  if ('twice' in how) return text.slice(0, at + how.twice) + text.slice(at);
  const message = JSON.parse(text);
  const places: [object, string][] = [];
  const visit = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return;
    for (const key of Object.keys(value)) {
      places.push([value, key]);
      visit((value as Record<string, unknown>)[key]);
    }
  };
  visit(message);
  const [holder, key] = places[how.at % places.length] ?? [{}, ''];
  (holder as Record<string, unknown>)[key] = how.value;
  return JSON.stringify(message);
}

describe(`${DAMAGED} damaged messages`, () => {
  it('do a server no harm, and what is good among them is kept and sent on', async () => {
    const given = sqliteForTest();
    const { db } = given.open();
    await migrate(db);
    const pass = await makePass(db, 1000);
    const now = Date.now;
    const store = createClassStore({ db, locksRows: false, mostBytes: 1e9 });
    const followers = createFollowers(store, Date.now);
    const unlimited = { take: () => 0 };
    const house: House = {
      followers,
      presence: createPresence(followers, createLimit(30, 60, now), now, () => {}),
      desk: {
        store,
        queue: createAppendQueue(store, now, followers.grown),
        identity: await readIdentity(db),
        now,
        appends: unlimited,
        fetches: unlimited,
      },
    };
    const own = await ownDevice(await makeKeys(false), 'desk');
    const lineOf = (heard: ServerMessage[]): Line => ({
      device: own.id,
      send(text) {
        const message = parseServerMessage(text);
        if (message === null) throw new Error(`The server said what it does not know: ${text}`);
        heard.push(message);
      },
      pressure: () => 0,
      end: () => {},
    });
    const [spoken, followed]: ServerMessage[][] = [[], []];
    const speaking = converse(house, lineOf(spoken ?? []));
    const following = converse(house, lineOf(followed ?? []));
    const { shared, found, sealed } = await classOf(own);
    const append = (records: readonly ClassRecord[], k: number) =>
      makeMessage({ t: 'append', k, c: classId('class'), records, pass });
    await speaking.take(readMessage(append([found], 0)) as never);
    await shared.take({ ...found, seq: 1, at: now() }, () => undefined);
    await following.take({ t: 'follow', c: classId('class'), after: 0, trace: 0 });
    const kinds = [
      append([await sealed('damaged one'), await sealed('damaged two')], 1),
      append([await shared.deleted()], 2),
      append(await shared.remove('nobody', now()), 3),
      append([(await shared.invite('owner', now() + 9999)).record], 4),
      makeMessage({ t: 'follow', c: classId('class'), after: 3, trace: 7 }),
      makeMessage({ t: 'deposit', k: 5, c: classId('class'), invite: 'i', box: 'AAAA' }),
      makeMessage({ t: 'fetch', k: 6, invite: 'i' }),
      makeMessage({ t: 'live', c: classId('class'), s: 's', n: 1, body: 'AAAA' }),
    ];
    // Where what is signed stayed whole by chance, nothing is damaged that matters.
    const signed = new Set(
      kinds.flatMap((text) =>
        (JSON.parse(text).records ?? []).map((one: ClassRecord) => textOf(one)),
      ),
    );
    const good: string[] = [];
    let understood = 0;
    for (const [n, how] of fc.sample(damage, { numRuns: DAMAGED, seed: SEED }).entries()) {
      const text = damaged(kinds[n % kinds.length] as string, how);
      const message = readMessage(text);
      const records = message?.t === 'append' ? message.records : [];
      const isWhole = records.length > 0 && records.every((one) => signed.has(textOf(one)));
      if (message && !isWhole) {
        understood += 1;
        await speaking.take(message);
      }
      if (n % EVERY !== 0) continue;
      const record = await sealed(`good ${n}`);
      good.push(record.id);
      await speaking.take(readMessage(append([record], 10 + n)) as never);
    }
    await followers.tick();
    await expect
      .poll(() => recordsIn(followed ?? []).filter(({ id }) => good.includes(id)).length)
      .toBe(good.length);
    const seqs = recordsIn(followed ?? []).map(({ seq }) => seq);
    expect(seqs).toEqual(seqs.map((_, place) => place + 1));
    const kept = (spoken ?? []).filter((said) => said.t === 'kept').length;
    expect(kept).toBeGreaterThanOrEqual(good.length);
    expect((await store.rightsOf(classId('class')))?.members.size).toBe(1);
    expect(understood).toBeGreaterThan(DAMAGED / 20);
    await db.destroy();
    given.remove();
  });

  it('do a device no harm, and what is good among them is read', async () => {
    const own = await ownDevice(await makeKeys(false), 'desk');
    const { shared, found, sealed } = await classOf(own);
    await shared.take({ ...found, seq: 1, at: 1 }, () => undefined);
    const goods: KeptRecord[] = [];
    for (let n = 0; n < 20; n++) goods.push({ ...(await sealed(`good ${n}`)), seq: n + 2, at: 1 });
    const others = [await shared.deleted(), (await shared.invite('owner', 9)).record];
    const from = [...goods, ...others.map((one) => ({ ...one, seq: 9, at: 1 }))];
    const taken: Taken[] = [];
    const rights = shared.rights();
    for (const [n, how] of fc.sample(damage, { numRuns: DAMAGED, seed: SEED }).entries()) {
      const record = from[n % from.length] as KeptRecord;
      const text = makeMessage({
        t: 'records',
        c: classId('class'),
        from: 0,
        to: 1,
        head: 1,
        records: [record],
      });
      const message = parseServerMessage(damaged(text, how));
      for (const one of message?.t === 'records' ? message.records : []) {
        if (!('id' in one) || textOf(one) === textOf(record)) continue;
        taken.push(...(await shared.take(one, () => undefined)));
      }
    }
    expect(taken.length).toBeGreaterThan(DAMAGED / 50);
    expect(taken.filter(({ kind }) => kind === 'events')).toEqual([]);
    expect(shared.rights()).toEqual(rights);
    const read = [];
    for (const record of goods) read.push(...(await shared.take(record, () => undefined)));
    expect(read.map(({ kind }) => kind)).toEqual(goods.map(() => 'events'));
  });
});

/** A class with its owner, and what she records. */
async function classOf(own: Awaited<ReturnType<typeof ownDevice>>) {
  let lastId = 0;
  const newId = () => `record-${lastId++}`;
  const spec = { classId: classId('class'), own, founder: own.id, invitation: null, newId };
  const shared = createSharedClass(spec);
  const found = await shared.found();
  const sealed = async (value: string): Promise<ClassRecord> => {
    const body = { of: 'child', id: 'c', field: 'name', value };
    const event = {
      id: eventId(newId()),
      classId: classId('class'),
      at: 1,
      by: 'desk',
      kind: 'set',
      body,
    };
    const record = await shared.sealed('run', newId(), 1, [event]);
    if (record === null) throw new Error('Nothing was sealed.');
    return record;
  };
  return { shared, found, sealed };
}

function recordsIn(messages: readonly ServerMessage[]): readonly KeptRecord[] {
  return messages.flatMap((message) =>
    message.t === 'records' ? message.records.filter((one) => 'id' in one) : [],
  );
}

/** A record's own part: its place and time are the server's to say. */
function textOf({ id, writer, count, epoch, lane, body, signature }: ClassRecord): string {
  return JSON.stringify([id, writer, count, epoch, lane, body, signature]);
}
