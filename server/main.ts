import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Kysely } from 'kysely';
import { renderUnicodeCompact } from 'uqr';
import { parseSchoolKey, type SchoolKey } from '../core/sharing/school-key.ts';
import { backUp } from './backup.ts';
import { keepInTouch, openPostgres } from './database/open-postgres.ts';
import { openSqlite } from './database/open-sqlite.ts';
import type { Tables } from './database/schema.ts';
import { makePass } from './identity.ts';
import { type Options, readOptions } from './options.ts';
import { serveClasses } from './serve.ts';

/** With a pass that nobody asked for, so many classes can be begun. */
const CLASSES_A_PASS = 50;

/** `npm run serve`: the app and what is shared, at one address. What it prints names nobody. */
try {
  await run(readOptions(process.argv.slice(2), process.env));
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : error}\n`);
  process.exit(1);
}

async function run(options: Options): Promise<void> {
  const { databaseUrl, cert, key, host, backup } = options;
  const folder = fileURLToPath(new URL('../dist', import.meta.url));
  const db = databaseUrl ? openPostgres(databaseUrl) : openSqlite(options.data);
  const served = await serveClasses({
    db,
    word: databaseUrl ? (heard) => keepInTouch(databaseUrl, heard) : null,
    folder: existsSync(folder) ? folder : null,
    host,
    port: options.port,
    tls: cert && key ? { cert: readFileSync(cert), key: readFileSync(key) } : null,
    ...(options.schoolKey === null ? {} : { schoolKey: readSchoolKey(options.schoolKey) }),
    now: Date.now,
    appendsPerSecond: 50,
    arrivalsPerSecond: 200,
  }).catch((error: NodeJS.ErrnoException) => {
    if (error.code !== 'EADDRINUSE') throw error;
    throw new Error(`Port ${options.port} is in use. Name another with --port.`);
  });
  const address = `${cert ? 'https' : 'http'}://${host}:${served.port}/`;
  log(`serving at ${address}`);
  await sayPass(db, options);
  if (backup !== null) keepCopies(db, backup);
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) {
    process.once(signal, () => {
      log('stopping');
      void served.stop().then(() => process.exit(0));
    });
  }
}

function readSchoolKey(file: string): SchoolKey {
  const key = existsSync(file) ? parseSchoolKey(readFileSync(file, 'utf8')) : null;
  if (key !== null) return key;
  throw new Error(
    `“${file}” is not the public half of a school's key. “npm run school-key -- make FILE” makes one, FILE.pub.`,
  );
}

/** A new database gets a pass; it is shown this once, since only its hash is kept. */
async function sayPass(db: Kysely<Tables>, { newPass }: Options): Promise<void> {
  const first = await db.selectFrom('pass').select('hash').limit(1).executeTakeFirst();
  if (first && newPass === null) return;
  const classes = newPass ?? CLASSES_A_PASS;
  const pass = await makePass(db, classes);
  process.stdout.write(
    `\nSchool pass, shown only now (${classes} classes can be shared with it):\n\n    ${pass}\n\n${renderUnicodeCompact(pass)}\n\n`,
  );
}

function keepCopies(db: Kysely<Tables>, folder: string): void {
  const copy = async (): Promise<void> => {
    try {
      const path = await backUp(db, folder, new Date().toISOString().slice(0, 10));
      if (path !== null) log(`copied to ${path}`);
    } catch (error) {
      log(`could not copy: ${error instanceof Error ? error.message : error}`);
    }
  };
  void copy();
  setInterval(() => void copy(), 60 * 60 * 1000).unref();
}

function log(line: string): void {
  process.stdout.write(`${new Date().toISOString()} ${line}\n`);
}
