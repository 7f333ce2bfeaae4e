import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Kysely, SqliteDialect } from 'kysely';
import sqlite from 'node-sqlite3-wasm';
import type { Tables } from './schema.ts';

/** One process, a log written ahead, every commit on the disk, and what is deleted overwritten. */
const PRAGMAS = [
  'locking_mode = EXCLUSIVE',
  'journal_mode = WAL',
  'synchronous = FULL',
  'secure_delete = ON',
];

/** The name of the database in its folder. */
const FILE = 'sweepline.db';

/**
 * Opens the database in a folder, which is made when it is not there. Every commit is on the disk before it
 * is answered (write-ahead log, `synchronous = FULL`). One server at a time: the lock that a killed one has
 * left is taken away when its process is gone. Throws when another server has it.
 */
export function openSqlite(folder: string): Kysely<Tables> {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const file = join(folder, FILE);
  takeLock(folder, file);
  const db = new sqlite.Database(file);
  for (const pragma of PRAGMAS) db.all(`PRAGMA ${pragma}`);
  const statements = new Map<string, sqlite.Statement>();
  const dialect = new SqliteDialect({
    database: {
      close() {
        for (const statement of statements.values()) statement.finalize();
        db.close();
        rmSync(pidFile(folder), { force: true });
      },
      prepare(sql) {
        const statement = statements.get(sql) ?? db.prepare(sql);
        statements.set(sql, statement);
        // One that failed stays as it was in the middle of it, and is made again for the next time.
        const orAnew = <Value>(work: () => Value): Value => {
          try {
            return work();
          } catch (error) {
            statements.delete(sql);
            statement.finalize();
            throw error;
          }
        };
        return {
          reader: /^\s*(select|with|pragma)\b|\breturning\b/i.test(sql),
          all: (values) => orAnew(() => statement.all(values as sqlite.BindValues)),
          run: (values) =>
            // When the disk is full SQLite takes the transaction back itself.
            sql === 'rollback' && !db.inTransaction
              ? { changes: 0, lastInsertRowid: 0 }
              : orAnew(() => statement.run(values as sqlite.BindValues)),
          iterate: (values) =>
            statement.iterate(values as sqlite.BindValues) as IterableIterator<unknown>,
        };
      },
    },
  });
  return new Kysely<Tables>({ dialect });
}

function pidFile(folder: string): string {
  return join(folder, 'sweepline.pid');
}

/** The package locks a database by a folder beside it, which stays when the process is killed. */
function takeLock(folder: string, file: string): void {
  const pid = pidFile(folder);
  const lock = `${file}.lock`;
  if (existsSync(lock)) {
    const owner = existsSync(pid) ? Number(readFileSync(pid, 'utf8')) : 0;
    if (owner !== process.pid && isRunning(owner)) {
      throw new Error(
        `Another server (process ${owner}) has ${file} open. Stop it first, or give this one another folder with --data.`,
      );
    }
    rmSync(lock, { recursive: true, force: true });
  }
  writeFileSync(pid, `${process.pid}\n`);
}

function isRunning(pid: number): boolean {
  if (!(pid > 0)) return false;
  try {
    process.kill(pid, 0);
    return true;
  } catch (thrown) {
    return (thrown as NodeJS.ErrnoException).code === 'EPERM';
  }
}
