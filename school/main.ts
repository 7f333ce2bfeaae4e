import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { makeLog } from '../core/log/log-file.ts';
import { fingerprintOf } from '../web/device/far/school-key.ts';
import { makeSchoolKey, readSchool } from './key-file.ts';
import { openClass } from './open-class.ts';
import { readRecords } from './read-records.ts';

const USAGE = `The school's key, with which a school can open classes whose owner agreed.

  npm run school-key -- make FILE               makes FILE, to be locked away, and FILE.pub for the server
  npm run school-key -- open FILE COPY FOLDER   opens the classes in a copy of the database into FOLDER

COPY is a file that the server's --backup made, or the address of a PostgreSQL database.`;

/** `npm run school-key`: makes the key, and opens classes with it, on a computer that is not the server. */
try {
  process.chdir(process.env.INIT_CWD ?? process.cwd());
  const [what, ...given] = process.argv.slice(2);
  const [file, copy, folder] = given;
  if (what === 'make' && file && given.length === 1) await make(file);
  else if (what === 'open' && file && copy && folder && given.length === 3) {
    await open(file, copy, folder);
  } else throw new Error(USAGE);
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : error}\n`);
  process.exitCode = 1;
}

async function make(file: string): Promise<void> {
  for (const path of [file, `${file}.pub`]) {
    if (existsSync(path)) throw new Error(`“${path}” is there already, and is left as it is.`);
  }
  const { key, secretFile } = await makeSchoolKey();
  writeFileSync(file, secretFile, { mode: 0o600, flag: 'wx' });
  writeFileSync(`${file}.pub`, `${JSON.stringify(key)}\n`, { flag: 'wx' });
  say(`${file} opens classes: lock it away, never on the server. ${file}.pub is for the server.`);
  say(`Fingerprint, for teachers to compare: ${await fingerprintOf(key)}`);
}

async function open(file: string, copy: string, folder: string): Promise<void> {
  const own = existsSync(file) ? await readSchool(readFileSync(file, 'utf8')) : null;
  if (own === null) throw new Error(`“${file}” is not the private half of a school's key.`);
  const classes = await readRecords(copy);
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  let count = 0;
  for (const [classId, records] of classes) {
    const opened = await openClass(classId, own, records);
    if (opened === null) continue;
    count += 1;
    const path = join(folder, `class-${count}.jsonl`);
    writeFileSync(path, makeLog(opened.events), { mode: 0o600 });
    const rest =
      opened.closed === 0 ? '' : ` (${opened.closed} of its records stay closed to this key)`;
    say(`${path}${rest}`);
  }
  say(
    `Opened ${count} of ${classes.size} classes; the others never let this key in, or are deleted.`,
  );
}

function say(line: string): void {
  process.stdout.write(`${line}\n`);
}
