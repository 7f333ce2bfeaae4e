import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { classId } from '../../core/ids.ts';
import type { ClassRecord, KeptRecord } from '../../core/sharing/record.ts';
import { migrate } from '../../server/database/migrations.ts';
import { makePass } from '../../server/identity.ts';
import { makeKeys } from '../../web/device/far/cipher.ts';
import { type OwnDevice, ownDevice } from '../../web/device/far/own-device.ts';
import { createSharedClass } from '../../web/device/far/shared-class.ts';
import { postgresForTest, sqliteForTest, startOf } from './databases.ts';
import { RawDevice } from './raw-device.ts';
import { startServerProcess } from './server-process.ts';

/** How often the server is killed (`kill -9`) while devices write; `KILLS=20` for a long run. */
const KILLS = Number(process.env.KILLS ?? 2);
/** How often all of PostgreSQL is. */
const DATABASE_KILLS = Number(process.env.DATABASE_KILLS ?? 1);
const WRITERS = 4;

describe.each([
  ['SQLite', sqliteForTest()],
  ['PostgreSQL', postgresForTest()],
] as const)('a server on %s that is killed', (name, given) => {
  if ('missing' in given) {
    it.skip(`cannot be tried here: ${given.missing}`, () => {});
    return;
  }
  afterAll(() => given.remove());

  it(`loses nothing that it acknowledged, and its followers miss nothing (${KILLS} kills)`, async () => {
    const { db } = given.open();
    await migrate(db);
    const pass = await makePass(db, 10);
    await db.destroy();
    let server = await startServerProcess(given);
    const { own, shared } = await beginClass(server.port, pass);
    const written = new Map<string, ClassRecord>();
    const acked = new Map<string, number>();
    const seen: KeptRecord[] = [];
    let isOver = false;
    const writers = Array.from({ length: WRITERS }, async (_, writer) => {
      for (let n = 0; !isOver; n++) {
        const id = `${name}-${writer}-${n}`;
        const record = (await shared.sealed('run', id, n, [])) as ClassRecord;
        written.set(id, record);
        await keepAtLast(
          () => server.port,
          own,
          record,
          acked,
          () => isOver,
        );
      }
    });
    const follower = followAll(
      () => server.port,
      own,
      seen,
      () => isOver,
    );
    for (let kill = 0; kill < KILLS; kill++) {
      await passed(150 + ((kill * 97) % 350));
      const before = acked.size;
      server.process.kill('SIGKILL');
      server = await startServerProcess(given);
      await until(() => acked.size > before + WRITERS);
    }
    if (name === 'PostgreSQL') {
      for (let kill = 0; kill < DATABASE_KILLS; kill++) {
        await passed(300);
        const before = acked.size;
        killPostgres(given.folder);
        await until(() => acked.size > before + WRITERS);
      }
    }
    isOver = true;
    await Promise.all(writers);
    await follower;
    const last = await RawDevice.connect(server.port, own);
    last.follow(classId('class'));
    const { head } = await last.next('following');
    await last.until(() => last.records.length >= head);
    const kept = new Map(last.records.map((record) => [record.id, record]));
    expect(last.records.map(({ seq }) => seq)).toEqual(
      Array.from({ length: head }, (_, n) => n + 1),
    );
    const lost = [...acked].filter(([id, seq]) => kept.get(id)?.seq !== seq);
    expect(lost).toEqual([]);
    for (const [id, { body }] of written) if (acked.has(id)) expect(kept.get(id)?.body).toBe(body);
    const missed = seen.filter(({ seq }, place) => seq !== place + 1);
    expect(missed).toEqual([]);
    expect(acked.size).toBeGreaterThan(KILLS * WRITERS);
    console.log(
      `${name}: ${acked.size} acknowledged, ${lost.length} lost, ${missed.length} missed`,
    );
    last.close();
    server.process.kill('SIGTERM');
  });
});

async function beginClass(port: number, pass: string) {
  const own = await ownDevice(await makeKeys(false), 'desk');
  let lastId = 0;
  const newId = () => `rights-${lastId++}`;
  const shared = createSharedClass({
    classId: classId('class'),
    own,
    founder: own.id,
    invitation: null,
    newId,
  });
  const device = await RawDevice.connect(port, own);
  await device.append(classId('class'), [await shared.found()], pass);
  device.follow(classId('class'));
  await device.until(() => device.records.length > 0);
  await shared.take(device.records[0] as KeptRecord, () => undefined);
  device.close();
  return { own, shared };
}

/** Sends a record again and again until it is acknowledged, as a device does after a lost connection. */
async function keepAtLast(
  port: () => number,
  own: OwnDevice,
  record: ClassRecord,
  acked: Map<string, number>,
  isOver: () => boolean,
): Promise<void> {
  while (!isOver()) {
    try {
      const device = await connection(port(), own);
      const answer = await device.append(classId('class'), [record]);
      if (answer.t === 'kept') {
        acked.set(record.id, answer.seqs[0] as number);
        return;
      }
      await passed(50);
    } catch {
      await passed(50);
    }
  }
}

const connections = new Map<number, RawDevice>();

/** One connection to each server, for all writers. */
async function connection(port: number, own: OwnDevice): Promise<RawDevice> {
  const held = connections.get(port);
  if (held && held.ended === null) return held;
  const device = await RawDevice.connect(port, own);
  connections.set(port, device);
  return device;
}

/** Follows from where it was, through every kill. */
async function followAll(
  port: () => number,
  own: OwnDevice,
  seen: KeptRecord[],
  isOver: () => boolean,
): Promise<void> {
  while (!isOver()) {
    try {
      const device = await RawDevice.connect(port(), own);
      device.follow(classId('class'), seen);
      let taken = 0;
      while (device.ended === null && !isOver()) {
        await passed(10);
        seen.push(...device.records.slice(taken));
        taken = device.records.length;
      }
      device.close();
    } catch {
      await passed(50);
    }
  }
}

/** Kills PostgreSQL as a power failure would, and starts it again. */
function killPostgres(folder: string): void {
  const data = join(folder, 'data');
  const [pid] = readFileSync(join(data, 'postmaster.pid'), 'utf8').split('\n');
  const options = readFileSync(join(data, 'postmaster.opts'), 'utf8');
  process.kill(Number(pid), 'SIGKILL');
  const [program = ''] = options.split(' ');
  const as = process.getuid?.() === 0 ? ['runuser', '-u', 'postgres', '--'] : [];
  const ctl = program.replace(/postgres$/, 'pg_ctl');
  const [first = '', ...rest] = [...as, ctl, ...startOf(folder)];
  // What the killed one has begun still holds its memory for a moment.
  for (let tries = 0; ; tries++) {
    try {
      execFileSync(first, rest, { stdio: 'pipe', cwd: folder });
      return;
    } catch (error) {
      if (tries === 20) throw error;
    }
  }
}

function passed(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms));
}

async function until(holds: () => boolean): Promise<void> {
  while (!holds()) await passed(10);
}
