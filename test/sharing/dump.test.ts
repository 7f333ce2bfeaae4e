import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { sql } from 'kysely';
import { afterAll, describe, expect, it } from 'vitest';
import { eventId } from '../../core/ids.ts';
import type { LogEvent } from '../../core/log/event.ts';
import { migrate } from '../../server/database/migrations.ts';
import { makePass } from '../../server/identity.ts';
import { postgresForTest, sqliteForTest } from './databases.ts';
import { FarDevice, newClass, newId } from './far-device.ts';
import { startServerProcess } from './server-process.ts';

/** What is said in the class, and must be nowhere else. */
const SAID = ['Quillonby', 'Zebedeus', 'ploverish', 'ash=ASHWORDS', 'hears the vowel, not the end'];

const TABLES = ['server', 'pass', 'class', 'record', 'invite', 'migration'];

describe.each([
  ['SQLite', sqliteForTest()],
  ['PostgreSQL', postgresForTest()],
] as const)('whoever has all of a server on %s', (_, given) => {
  if ('missing' in given) {
    it.skip(`cannot be tried here: ${given.missing}`, () => {});
    return;
  }
  afterAll(() => given.remove());

  it('finds no name, word or note of a class in its database, its files or what it prints', async () => {
    const { db } = given.open();
    await migrate(db);
    const pass = await makePass(db, 2);
    await db.destroy();
    const server = await startServerProcess(given);
    const classId = newClass();
    const desk = await FarDevice.begin(() => server.port, classId, pass);
    const phone = await desk.letIn('teacher');
    const aide = await desk.letIn('aide');
    for (const [n, text] of SAID.entries()) {
      const by = n % 2 === 0 ? desk : phone;
      const stamp = { classId, at: Date.now(), by: by.own.by };
      const events: LogEvent[] = [
        {
          ...stamp,
          id: eventId(newId()),
          kind: 'set',
          body: { of: 'child', id: `c${n}`, field: 'name', value: text },
        },
        {
          ...stamp,
          id: eventId(newId()),
          kind: 'noted',
          body: { drillId: null, groupId: 'g', text },
        },
      ];
      await by.record(events);
      await by.far.settled();
    }
    await desk.pack();
    await desk.far.say(await desk.shared.remove(aide.own.id, desk.far.now()));
    await phone.until(SAID.length * 2);
    for (const device of [desk, phone, aide]) device.close();
    const ended = new Promise((resolve) => server.process.once('exit', resolve));
    server.process.kill('SIGTERM');
    await ended;
    const again = given.open().db;
    const rows: unknown[] = [];
    for (const table of TABLES) {
      rows.push((await sql`select * from ${sql.table(table)}`.execute(again)).rows);
    }
    await again.destroy();
    const files = readdirSync(given.folder, { recursive: true, withFileTypes: true })
      .filter((file) => file.isFile())
      .map((file) => readFileSync(join(file.parentPath, file.name), 'latin1'));
    const all = [JSON.stringify(rows), server.said(), ...files].join('\n');
    // It is there, and looked for in the right place.
    expect(all.split(classId).length).toBeGreaterThan(3);
    expect(SAID.filter((text) => formsOf(text).some((form) => all.includes(form)))).toEqual([]);
  });

  it('would be found out: each form is seen where it is written down', () => {
    for (const text of SAID) {
      const bytes = Buffer.from(`before ${text} after`);
      for (const form of [bytes.toString(), bytes.toString('hex'), bytes.toString('base64url')]) {
        expect(formsOf(text).some((one) => form.includes(one))).toBe(true);
      }
    }
  });
});

/** A text as it could be written down: as it is, in hexadecimal, and in base64 from any byte on. */
function formsOf(text: string): readonly string[] {
  const inBase64 = ['', ' ', '  '].map((before) => {
    const signs = Buffer.from(before + text).toString('base64url');
    // The first and last signs depend on what stands beside it.
    return signs.slice(before.length === 0 ? 0 : before.length + 1, -2);
  });
  return [text, Buffer.from(text).toString('hex'), ...inBase64];
}
