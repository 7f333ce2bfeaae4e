import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { eventId } from '../core/ids.ts';
import type { LogEvent } from '../core/log/event.ts';
import { parseLog } from '../core/log/log-file.ts';
import { parseSchoolKey } from '../core/sharing/school-key.ts';
import { fromRoot } from '../house/root.mjs';
import { backUp } from '../server/backup.ts';
import { makePass } from '../server/identity.ts';
import { serveClasses } from '../server/serve.ts';
import { sqliteForTest } from '../test/sharing/databases.ts';
import { FarDevice, newClass, newId } from '../test/sharing/far-device.ts';
import { fingerprintOf } from '../web/device/far/school-key.ts';
import { readSchool } from './key-file.ts';

const folder = mkdtempSync(join(tmpdir(), 'sweepline-school-'));
const database = sqliteForTest();
afterAll(() => {
  database.remove();
  rmSync(folder, { recursive: true, force: true });
});

function school(...args: readonly string[]) {
  return spawnSync(process.execPath, ['--import', 'tsx', fromRoot('school/main.ts'), ...args], {
    cwd: fromRoot(),
    env: { ...process.env, INIT_CWD: folder },
    encoding: 'utf8',
  });
}

/** A note, which is private. */
function note(device: FarDevice, text: string): LogEvent {
  const stamp = { id: eventId(newId()), classId: device.classId, at: Date.now() };
  const body = { drillId: null, groupId: 'g', text };
  return { ...stamp, by: device.own.by, kind: 'noted', body };
}

it('makes a key, which opens from a copy the classes that let it in, and up to when they took it back', async () => {
  const made = school('make', 'school.key');
  const key = parseSchoolKey(readFileSync(join(folder, 'school.key.pub'), 'utf8'));
  if (key === null) throw new Error(made.stderr);
  expect(made.stdout).toContain(await fingerprintOf(key));
  expect(statSync(join(folder, 'school.key')).mode & 0o777).toBe(0o600);
  expect(school('make', 'school.key').stderr).toContain('is there already');
  const own = await readSchool(readFileSync(join(folder, 'school.key'), 'utf8'));
  if (own === null) throw new Error('The file that was made is no key.');
  expect({ sign: own.sign, box: own.box }).toEqual(key);

  const { db, word } = database.open();
  const here = { folder: null, host: '127.0.0.1', port: 0, tls: null, now: Date.now };
  const limits = { appendsPerSecond: 1000, arrivalsPerSecond: 1000 };
  const server = await serveClasses({ db, word, ...here, ...limits, schoolKey: key });
  const address = `http://127.0.0.1:${server.port}/v1/school-key`;
  expect(parseSchoolKey(await (await fetch(address)).text())).toEqual(key);
  const pass = await makePass(db, 2);
  const [agreed, silent] = [
    await FarDevice.begin(() => server.port, newClass(), pass),
    await FarDevice.begin(() => server.port, newClass(), pass),
  ];
  await agreed.record([note(agreed, 'before')]);
  await silent.record([note(silent, 'not for the school')]);
  await agreed.far.settled();
  await agreed.far.say([await agreed.shared.letIn(own, 'school')]);
  await agreed.record([note(agreed, 'meanwhile')]);
  await agreed.far.settled();
  await agreed.far.say(await agreed.shared.remove(own.id, agreed.far.now()));
  await agreed.record([note(agreed, 'afterwards')]);
  await agreed.far.settled();
  await silent.far.settled();
  const copy = await backUp(db, folder, '2026-09-01');
  for (const device of [agreed, silent]) device.close();
  await server.stop();

  const opened = school('open', 'school.key', copy ?? '', 'opened');
  expect(opened.stdout).toContain('Opened 1 of 2 classes');
  expect(opened.stdout).toContain('1 of its records stay closed');
  const [file = ''] = readdirSync(join(folder, 'opened'));
  const read = parseLog(readFileSync(join(folder, 'opened', file), 'utf8'));
  if ('error' in read) throw new Error(read.error.code);
  expect(read.events.map(({ body }) => (body as { readonly text: string }).text)).toEqual([
    'before',
    'meanwhile',
  ]);
});

it('says what is wrong with what it is given', () => {
  expect(school('open', 'nothing', 'copy.db', 'out').stderr).toContain('not the private half');
  expect(school('close').stderr).toContain('npm run school-key');
});
