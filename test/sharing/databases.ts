import { execFileSync, spawnSync } from 'node:child_process';
import { chownSync, existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Kysely } from 'kysely';
import { keepInTouch, openPostgres } from '../../server/database/open-postgres.ts';
import { openSqlite } from '../../server/database/open-sqlite.ts';
import type { Tables } from '../../server/database/schema.ts';
import type { ServeSpec } from '../../server/serve.ts';

/** A database for tests, which can be opened again and again. */
export interface TestDatabase {
  readonly name: 'SQLite' | 'PostgreSQL';
  /** Its address for `DATABASE_URL`; null for the embedded one. */
  readonly url: string | null;
  /** Its folder. */
  readonly folder: string;
  open(): { readonly db: Kysely<Tables>; readonly word: ServeSpec['word'] };
  remove(): void;
}

/** An embedded database in a folder of its own. */
export function sqliteForTest(): TestDatabase {
  const folder = mkdtempSync(join(tmpdir(), 'sweepline-sqlite-'));
  return {
    name: 'SQLite',
    url: null,
    folder,
    open: () => ({ db: openSqlite(folder), word: null }),
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

/**
 * A PostgreSQL of its own for this test, reached by a socket in its own folder, as a port by chance may be
 * another's; or the reason when there is none: it comes by `apt-get install postgresql`, and does not run
 * as root, so that its files are given to the user that the package makes. It begins when it is opened first.
 */
export function postgresForTest(): TestDatabase | { readonly missing: string } {
  const programs = programsIn('/usr/lib/postgresql');
  if (programs === null) {
    return { missing: 'PostgreSQL is not installed (apt-get install postgresql).' };
  }
  const isRoot = process.getuid?.() === 0;
  const uid = Number(spawnSync('id', ['-u', 'postgres'], { encoding: 'utf8' }).stdout);
  if (isRoot && !(uid > 0)) return { missing: 'There is no user postgres to run PostgreSQL.' };
  const folder = join(tmpdir(), `sweepline-postgres-${process.pid}-${started++}`);
  const url = `postgres://test@localhost:5432/postgres?host=${encodeURIComponent(folder)}`;
  const data = join(folder, 'data');
  let isRunning = false;
  const run = (...command: readonly string[]) => {
    const as = isRoot ? ['runuser', '-u', 'postgres', '--'] : [];
    const [program = '', ...args] = [...as, ...command];
    execFileSync(program, args, { stdio: 'pipe', cwd: folder });
  };
  const start = () => {
    mkdirSync(folder);
    if (isRoot) chownSync(folder, uid, uid);
    run(join(programs, 'initdb'), '-D', data, '-U', 'test', '-A', 'trust', '--no-sync');
    run(join(programs, 'pg_ctl'), ...startOf(folder));
    isRunning = true;
  };
  return {
    name: 'PostgreSQL',
    url,
    folder,
    open() {
      if (!isRunning) start();
      return { db: openPostgres(url), word: (heard) => keepInTouch(url, heard) };
    },
    remove() {
      if (isRunning) run(join(programs, 'pg_ctl'), '-D', data, '-m', 'immediate', '-w', 'stop');
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** How many have been made in this process: each has its own folder. */
let started = 0;

/**
 * What pg_ctl is told to start the PostgreSQL in a folder: by its socket alone, and to wait longer than the
 * minute it waits by itself, as long as a test may, on a machine that does other work.
 */
export function startOf(folder: string): readonly string[] {
  const options = `-p 5432 -k ${folder} -c listen_addresses=`;
  const [data, log] = [join(folder, 'data'), join(folder, 'log')];
  return ['-D', data, '-o', options, '-l', log, '-w', '-t', '240', 'start'];
}

/** The folder of the newest version's programs; null when there is none. */
function programsIn(folder: string): string | null {
  if (!existsSync(folder)) return null;
  const newest = readdirSync(folder).sort((left, right) => Number(right) - Number(left))[0];
  return newest === undefined ? null : join(folder, newest, 'bin');
}
